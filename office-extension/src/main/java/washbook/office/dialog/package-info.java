/** What a command shows and asks in windows of the office. */
package washbook.office.dialog;
