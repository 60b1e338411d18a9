package org.leafward.climate.core.water;

/** How well a figure is founded. */
public enum Evidence {

	/** The standard or handbook itself was read. */
	STANDARD("read in the standard or handbook itself"),

	/** An extension, agency or university page or a journal's abstract was read. */
	PAGE("read on an agency's or university's page"),

	/** Somebody else quotes the source; not confirmed. */
	SECOND_HAND("at second hand, not confirmed"),

	/** From memory of the source; not confirmed. */
	MEMORY("from memory, not confirmed"),

	/** A choice of this project. */
	OUR_CHOICE("our choice");

	private final String words;

	Evidence(String words) {
		this.words = words;
	}

	public String words() {
		return this.words;
	}

}
