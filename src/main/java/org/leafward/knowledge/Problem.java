package org.leafward.knowledge;

/**
 * Something wrong in a knowledge file.
 *
 * @param file kind and file name, for example {@code rulepacks/evergreens.yaml}
 * @param line line of the offending text, from 1; 0 when the whole file is meant
 * @param column column of the offending text, from 1; 0 when the whole file is meant
 * @param path where in the document, for example {@code /rules/3/kind}; empty for the
 * whole document
 * @param what what is wrong
 * @param mend what to write instead, in plain words
 */
public record Problem(String file, int line, int column, String path, String what, String mend) {

	/**
	 * The problem on one line, beginning the way that editors can jump to.
	 * @return for example
	 * {@code rulepacks/a.yaml:12:11: 'doo' is not a kind; write one of: do, hold-off}
	 */
	public String words() {
		String place = (this.line > 0) ? "%s:%d:%d".formatted(this.file, this.line, this.column) : this.file;
		return "%s: %s; %s".formatted(place, this.what, this.mend);
	}

}
