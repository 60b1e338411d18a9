package org.leafward.care.core.rule;

/**
 * Something that people log, such as a wound or a late freeze. Where nobody logged it in
 * a season there is no task.
 *
 * @param event its name, for example {@code oak-wound}
 * @param days days after it
 */
public record EventAnchor(String event, Days days) implements Anchor {

	@Override
	public String words() {
		return this.days.words("the day that was logged as " + this.event.replace('-', ' '));
	}

	@Override
	public String movable() {
		return this.event;
	}

}
