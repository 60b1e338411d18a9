package org.leafward.pages;

import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Who is looking at a page.
 *
 * @param person who it is; null for the operator token and for a stranger
 * @param name the name to show; empty for a stranger
 * @param operator whether everything may be opened
 * @param demo whether the server shows the invented region
 * @param specialist whether rules may be changed
 * @param counties names of the counties that a specialist serves
 * @param coordinator whether groups may be begun
 */
public record Viewer(@Nullable UUID person, String name, boolean operator, boolean demo, boolean specialist,
		Set<String> counties, boolean coordinator) {

	public Viewer {
		counties = Set.copyOf(counties);
	}

	/**
	 * A viewer who is no specialist, unless they are the operator.
	 * @param person whose pages are shown
	 * @param name the name to show
	 * @param operator whether everything may be opened
	 * @param demo whether the server shows the invented region
	 */
	public Viewer(@Nullable UUID person, String name, boolean operator, boolean demo) {
		this(person, name, operator, demo, operator, Set.of(), false);
	}

	/**
	 * Whether pages of this person may be opened, and what is on them changed.
	 * @param owner whose page it is
	 * @return true for the operator and for the person
	 */
	public boolean mayOpen(UUID owner) {
		return this.operator || owner.equals(this.person);
	}

	/**
	 * Whether a place may be looked at by somebody whose it isn't: by the specialists of
	 * its county.
	 * @param county its county
	 * @return false for the owner, who may do more
	 */
	public boolean serves(String county) {
		return !county.isBlank() && this.counties.stream().anyMatch(county::equalsIgnoreCase);
	}

	public boolean stranger() {
		return this.person == null && !this.operator;
	}

	/**
	 * The ways that stand at the head of each page.
	 * @return those that lead somewhere for this viewer
	 */
	public Ways ways() {
		return Ways.of(this);
	}

}
