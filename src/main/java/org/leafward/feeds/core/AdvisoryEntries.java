package org.leafward.feeds.core;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.leafward.advisories.Advisory;
import org.leafward.advisories.AdvisoryState;
import org.leafward.advisories.AdvisoryText;
import org.leafward.calendars.PlainText;
import org.leafward.feeds.core.FeedEntry.Standing;
import org.leafward.language.Language;
import org.leafward.measure.DayWindow;

/** Words advisories for the calendar of a reader. */
public final class AdvisoryEntries {

	private static final int PART = 260;

	private final TaskEntries words;

	private final Language language;

	private final String base;

	/**
	 * Creates the words for a reader.
	 * @param words their language and units
	 * @param language what they read
	 * @param base address of the server, without a slash at the end
	 */
	public AdvisoryEntries(TaskEntries words, Language language, String base) {
		this.words = words;
		this.language = language;
		this.base = base;
	}

	/**
	 * The entry of an advisory, on all days that it speaks of in the time of its area.
	 * What a calendar shows is checked by its programs twice a day at best, so who must
	 * be told in time is told by mail.
	 * @param advisory the advisory
	 * @return cancelled when it was called off
	 */
	public FeedEntry of(Advisory advisory) {
		boolean off = advisory.state() == AdvisoryState.CANCELLED;
		AdvisoryText text = advisory.text(this.language);
		LocalDate from = LocalDate.ofInstant(advisory.onset(), advisory.zone());
		LocalDate to = LocalDate.ofInstant(advisory.expires().minusSeconds(1), advisory.zone());
		String title = this.words.said(off ? "Advisory called off" : "Advisory") + ": "
				+ PlainText.line(text.headline());
		String link = this.base + advisory.path();
		return new FeedEntry("advisory-" + advisory.id() + TaskEntries.DOMAIN, advisory.number() - 1,
				advisory.first().truncatedTo(ChronoUnit.SECONDS), advisory.sent().truncatedTo(ChronoUnit.SECONDS),
				new DayWindow(from, to.isBefore(from) ? from : to), PlainText.cut(title, TaskEntries.SUMMARY),
				description(text, link), link, null, List.of(this.words.said("Advisory")),
				off ? Standing.CANCELLED : Standing.OPEN);
	}

	private String description(AdvisoryText text, String link) {
		String end = this.words.said("The whole advisory") + ": " + link;
		String parts = String.join("\n", part(text.what()), this.words.said("When") + ": " + part(text.when()),
				this.words.said("What to do") + ": " + PlainText.clean(text.toDo()));
		int room = TaskEntries.DESCRIPTION - end.getBytes(StandardCharsets.UTF_8).length - 1;
		return PlainText.cutOctets(parts, room) + "\n" + end;
	}

	private static String part(String text) {
		return PlainText.cutOctets(PlainText.clean(text), PART);
	}

}
