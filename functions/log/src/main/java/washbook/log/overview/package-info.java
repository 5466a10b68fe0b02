/** Where each batch of a log stands and what a person should look at: one value for each batch. */
package washbook.log.overview;
