package org.leafward.pages;

/** Tells who is looking; implemented by accounts. */
public interface Viewers {

	/**
	 * Who sent the request being answered.
	 * @return a stranger when nobody is known
	 */
	Viewer current();

}
