package org.leafward.reminders.web;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.measure.NotThere;
import org.leafward.pages.Viewer;
import org.leafward.pages.Viewers;
import org.leafward.reminders.Wishes;
import org.leafward.reminders.channel.Channel;
import org.springframework.stereotype.Component;

/** Whose reminders are asked for: always those of whoever asks. */
@Component
class Me {

	private final Viewers viewers;

	private final People people;

	private final List<Channel> channels;

	private final Clock clock;

	Me(Viewers viewers, People people, List<Channel> channels, Clock clock) {
		this.viewers = viewers;
		this.people = people;
		this.channels = channels.stream()
			.sorted(Comparator.comparing((Channel one) -> !one.code().equals(Wishes.MAIL)).thenComparing(Channel::code))
			.toList();
		this.clock = clock;
	}

	/**
	 * Who asks.
	 * @throws NotThere for the operator token, which is nobody in particular
	 */
	Person person() {
		Viewer viewer = this.viewers.current();
		if (viewer.person() == null) {
			throw new NotThere("Reminders are for people; sign in as one, or use a token of theirs.");
		}
		return this.people.find(new PersonId(viewer.person()))
			.orElseThrow(() -> new NotThere("There is no such person any more."));
	}

	/** The day where a person is. */
	LocalDate today(ZoneId zone) {
		return LocalDate.ofInstant(this.clock.instant(), zone);
	}

	/** The ways a message can leave the house, mail first. */
	List<Channel> channels() {
		return this.channels;
	}

	/** Codes of the channels. */
	List<String> codes() {
		return this.channels.stream().map(Channel::code).toList();
	}

}
