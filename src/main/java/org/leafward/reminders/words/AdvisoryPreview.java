package org.leafward.reminders.words;

import java.time.ZoneOffset;
import java.util.List;
import java.util.UUID;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.advisories.Advisory;
import org.leafward.advisories.AdvisoryState;
import org.leafward.advisories.MessagePreview;
import org.leafward.care.TaskId;
import org.leafward.language.Language;
import org.leafward.language.Speech;
import org.leafward.language.Units;
import org.leafward.reminders.MessageText;
import org.leafward.reminders.Series;
import org.leafward.reminders.Wishes;
import org.leafward.reminders.core.AdvisoryNotice;
import org.leafward.reminders.core.AdvisoryNotice.News;
import org.leafward.reminders.core.Content;
import org.leafward.reminders.core.Links;
import org.springframework.stereotype.Service;

/**
 * Writes messages about advisories that nobody gets, by the words of those that leave.
 */
@Service
class AdvisoryPreview implements MessagePreview {

	private static final UUID NONE = new UUID(0, 0);

	private static final Person NOBODY = new Person(new PersonId(NONE), "Nobody", null, ZoneOffset.UTC, false);

	private final MessageWords words;

	private final Links links;

	AdvisoryPreview(MessageWords words, Links links) {
		this.words = words;
		this.links = links;
	}

	@Override
	public Shown of(Advisory advisory, Language language) {
		News news = (advisory.state() == AdvisoryState.CANCELLED) ? News.OFF
				: (advisory.number() > 1) ? News.CHANGED : News.NEW;
		Content content = new Content(NOBODY, Wishes.MAIL, Series.ADVISORY, List.of(), null,
				List.of(new AdvisoryNotice(NONE, advisory, news)));
		MessageText text = this.words.write(content, new Speech(language, Units.BOTH), new NobodysLinks(this.links));
		return new Shown(language, text.subject(), text.text(), text.brief());
	}

	/** Those of a reader, but for what only that reader may follow. */
	private record NobodysLinks(Links links) implements Links {

		@Override
		public String task(TaskId task) {
			return this.links.task(task);
		}

		@Override
		public String act(UUID reminder, Act act) {
			return this.links.home() + "/r/…";
		}

		@Override
		public String stop(PersonId person, String channel, Series series) {
			return this.links.home() + "/u/…";
		}

		@Override
		public String wishes() {
			return this.links.wishes();
		}

		@Override
		public String home() {
			return this.links.home();
		}

	}

}
