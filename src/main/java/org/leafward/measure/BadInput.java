package org.leafward.measure;

import java.util.Locale;

/**
 * Something given from outside can't be used. Says what is wrong, where, and how to mend
 * it; it is shown to the person who gave it, word for word.
 */
public class BadInput extends RuntimeException {

	private static final long serialVersionUID = 1L;

	private final String where;

	private final String mend;

	/**
	 * Creates a refusal.
	 * @param what what is wrong, with the value and the bound
	 * @param where the field, line or file
	 * @param mend what to do instead
	 */
	public BadInput(String what, String where, String mend) {
		super(what);
		this.where = where;
		this.mend = mend;
	}

	public String what() {
		return String.valueOf(getMessage());
	}

	public String where() {
		return this.where;
	}

	public String mend() {
		return this.mend;
	}

	@Override
	public String toString() {
		return String.format(Locale.ROOT, "%s (%s): %s", what(), this.where, this.mend);
	}

}
