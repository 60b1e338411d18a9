package org.leafward.care.core.rule;

import org.jspecify.annotations.Nullable;

/**
 * Where a rule comes from.
 *
 * @param title title of the publication, or what is common practice
 * @param publisher who published it; null only below {@link Grade#READ_IN_SOURCE}
 * @param address web address; null when there is none
 * @param grade how well it backs the rule
 */
public record Source(String title, @Nullable String publisher, @Nullable String address, Grade grade) {

	/**
	 * The source for readers.
	 * @return title, publisher and grade on one line
	 */
	public String words() {
		return this.title + ((this.publisher != null) ? ", " + this.publisher : "") + " (" + this.grade.words() + ")";
	}

}
