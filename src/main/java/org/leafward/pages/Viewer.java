package org.leafward.pages;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Who is looking at a page.
 *
 * @param person whose pages are shown; null for an operator and for a stranger
 * @param name the name to show; empty for a stranger
 * @param operator whether everything may be opened
 * @param demo whether the server shows the invented region
 * @param specialist whether rules may be changed
 */
public record Viewer(@Nullable UUID person, String name, boolean operator, boolean demo, boolean specialist) {

	/**
	 * A viewer who is no specialist, unless they are the operator.
	 * @param person whose pages are shown
	 * @param name the name to show
	 * @param operator whether everything may be opened
	 * @param demo whether the server shows the invented region
	 */
	public Viewer(@Nullable UUID person, String name, boolean operator, boolean demo) {
		this(person, name, operator, demo, operator);
	}

	/**
	 * Whether pages of this person may be opened.
	 * @param owner whose page it is
	 * @return true for the operator and for the person
	 */
	public boolean mayOpen(UUID owner) {
		return this.operator || owner.equals(this.person);
	}

	public boolean stranger() {
		return this.person == null && !this.operator;
	}

}
