package org.leafward.lookalikes.core;

import org.jspecify.annotations.Nullable;

/**
 * Where a cause's description comes from.
 *
 * @param title title of the publication, or what is common practice
 * @param publisher who published it; null where there is no publication
 * @param address web address; null when there is none
 * @param trust how well it backs the cause
 */
public record Reference(String title, @Nullable String publisher, @Nullable String address, Trust trust) {

	/**
	 * The source for readers.
	 * @return title, publisher and how far to trust it, on one line
	 */
	public String words() {
		return this.title + ((this.publisher != null) ? ", " + this.publisher : "") + " (" + this.trust.words() + ")";
	}

}
