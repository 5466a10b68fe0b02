/** Plain-arithmetic forms of functions, fitted, measured and written out while building. */
package washbook.functions.portable.form;
