package org.leafward.reminders.links;

import java.util.Optional;
import org.leafward.accounts.People;
import org.leafward.reminders.HowToTell;
import org.leafward.reminders.Wishes;
import org.leafward.reminders.core.Later;
import org.leafward.reminders.store.ActTable;
import org.springframework.stereotype.Service;

/** Leaving a series, and coming back to it, by a link in a message. */
@Service
public class Leaving {

	private final HowToTell wishes;

	private final People people;

	private final ActTable rows;

	Leaving(HowToTell wishes, People people, ActTable rows) {
		this.wishes = wishes;
		this.people = people;
		this.rows = rows;
	}

	/**
	 * How the person of a link wants to be told.
	 * @param link the link
	 * @return empty when the person isn't there any more
	 */
	public Optional<Wishes> wishes(StopLink link) {
		return this.people.find(link.person()).map((person) -> this.wishes.of(person.id()));
	}

	/**
	 * Whether a series was left.
	 * @param link the link
	 * @return false when the person isn't there any more
	 */
	public boolean left(StopLink link) {
		return wishes(link).filter((how) -> how.stopped(link.channel(), link.series())).isPresent();
	}

	/**
	 * Leaves a series. What somebody asked to be told again goes with it.
	 * @param link the link
	 * @return false when it was left before, or the person isn't there any more: nothing
	 * is noted of them
	 */
	public boolean leave(StopLink link) {
		if (wishes(link).isEmpty() || left(link)) {
			return false;
		}
		this.wishes.stop(link.person(), link.channel(), link.series());
		if (link.series() == Later.SERIES) {
			this.rows.withdrawLaters(link.person(), link.channel());
		}
		return true;
	}

	/**
	 * Comes back to a series.
	 * @param link the link
	 * @return false when it wasn't left
	 */
	public boolean comeBack(StopLink link) {
		if (!left(link)) {
			return false;
		}
		this.wishes.resume(link.person(), link.channel(), link.series());
		return true;
	}

}
