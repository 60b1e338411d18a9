package org.leafward.measure;

/** What was asked for does not exist, or not for this person; the answer is the same. */
public class NotThere extends RuntimeException {

	private static final long serialVersionUID = 1L;

	/**
	 * Creates the answer.
	 * @param what what is not there, in words for the person who asked
	 */
	public NotThere(String what) {
		super(what);
	}

}
