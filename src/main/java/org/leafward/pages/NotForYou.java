package org.leafward.pages;

/**
 * Why a page is not shown to whoever is signed in. Who refuses puts it into the request
 * under {@link #ATTRIBUTE} and answers 403; the error page says it.
 *
 * @param what who may see the page, a sentence without its full stop
 * @param mend what to do instead
 */
public record NotForYou(String what, String mend) {

	/** Name of the request attribute. */
	public static final String ATTRIBUTE = NotForYou.class.getName();

}
