/** Where a log stands in a sheet: its headers, its rows, the lines above them. */
package washbook.log.layout;
