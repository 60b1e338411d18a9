package org.leafward.reminders.core;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.leafward.care.CareTask;
import org.leafward.reminders.MessageText;
import org.leafward.reminders.Series;
import org.leafward.reminders.Topic;
import org.leafward.reminders.core.Letter.Sentence;

/** Writes messages. The same content gives the same words, in whatever order it comes. */
public final class MessageWriter {

	private static final int LONGEST_SUBJECT = 120;

	private static final int MOST_SITES = 5;

	private static final Comparator<ReminderItem> ORDER = Comparator
		.comparing((ReminderItem item) -> item.topic() != Topic.TONIGHT)
		.thenComparing((item) -> item.task().window().from())
		.thenComparing((item) -> item.task().siteName())
		.thenComparing((item) -> item.task().text().title())
		.thenComparing((item) -> item.task().id().value());

	private static final Comparator<AdvisoryNotice> BY_ONSET = Comparator
		.comparing((AdvisoryNotice one) -> one.advisory().onset())
		.thenComparing((one) -> one.advisory().id().value());

	private final ForPrograms programs;

	/**
	 * Creates the writer.
	 * @param programs writes the form for programs
	 */
	public MessageWriter(ForPrograms programs) {
		this.programs = programs;
	}

	/**
	 * Writes a message.
	 * @param content what it is about
	 * @param wording language and units of the reader
	 * @param links addresses
	 * @return its words in every form
	 * @throws IllegalArgumentException when there is nothing to tell
	 */
	public MessageText write(Content content, Wording wording, Links links) {
		Content ordered = ordered(content);
		Draft draft = draft(ordered, wording, links);
		Letter letter = new Letter(wording.language(), draft.title(), draft.body(), foot(ordered, wording, links));
		return new MessageText(OneLine.cut(draft.subject(), LONGEST_SUBJECT), PlainLetter.of(letter),
				HtmlLetter.of(letter), brief(draft), draft.link(), this.programs.write(ordered, wording, links));
	}

	private static Content ordered(Content content) {
		List<ReminderItem> items = content.items().stream().sorted(ORDER).toList();
		return new Content(content.person(), content.channel(), content.series(), items, content.outlook(),
				content.notices().stream().sorted(BY_ONSET).toList());
	}

	private static Draft draft(Content content, Wording wording, Links links) {
		if (content.notices().isEmpty()) {
			return draft(content, new TaskWords(wording, links));
		}
		AdvisoryDraft advisories = new AdvisoryDraft(content.notices(), wording, links);
		boolean alone = content.items().isEmpty() && content.outlook() == null;
		return alone ? advisories.draft() : advisories.before(draft(content, new TaskWords(wording, links)));
	}

	private static Draft draft(Content content, TaskWords words) {
		Outlook outlook = content.outlook();
		if (content.items().isEmpty() && (outlook == null || content.series() != Series.OUTLOOK)) {
			throw new IllegalArgumentException("a message about nothing");
		}
		return switch (content.series()) {
			case MORNING, SINGLE, ADVISORY -> new MorningDraft(content.items(), words).draft();
			case TONIGHT -> new NightDraft(content.items(), words).draft();
			case OUTLOOK -> (outlook != null) ? new OutlookDraft(content.items(), outlook, words).draft()
					: new MorningDraft(content.items(), words).draft();
		};
	}

	/** Counted in UTF-16, which is never less than what others count. */
	private static String brief(Draft draft) {
		String whole = draft.rest().isEmpty() ? draft.subject() : draft.subject() + " – " + draft.rest();
		int most = MessageText.LONGEST_BRIEF;
		String brief = OneLine.cut(whole, most);
		while (brief.length() > MessageText.LONGEST_BRIEF) {
			most -= brief.length() - MessageText.LONGEST_BRIEF;
			brief = OneLine.cut(whole, most);
		}
		return brief;
	}

	private static List<Sentence> foot(Content content, Wording wording, Links links) {
		List<Sentence> foot = new ArrayList<>();
		String sites = sites(content, wording);
		Word plants = (content.series() == Series.ADVISORY) ? Word.FOOT_ADVISORY : Word.FOOT_PLANTS;
		foot.add(Sentence.of(sites.isEmpty() ? wording.say(plants) : wording.say(Word.FOOT_SITES, sites)));
		foot.add(new Sentence(wording.say(Word.FOOT_WISHES), links.wishes()));
		Word stop = switch (content.series()) {
			case MORNING -> Word.FOOT_STOP_MORNING;
			case OUTLOOK -> Word.FOOT_STOP_OUTLOOK;
			case TONIGHT -> Word.FOOT_STOP_TONIGHT;
			case SINGLE -> Word.FOOT_STOP_SINGLE;
			case ADVISORY -> Word.FOOT_STOP_ADVISORY;
		};
		foot.add(new Sentence(wording.say(stop),
				links.stop(content.person().id(), content.channel(), content.series())));
		foot.add(new Sentence(wording.say(Word.FOOT_FROM), links.home()));
		if (!wording.contact().isEmpty()) {
			foot.add(Sentence.of(wording.contact()));
		}
		return foot;
	}

	private static String sites(Content content, Wording wording) {
		Stream<CareTask> items = content.items().stream().map(ReminderItem::task);
		Outlook outlook = content.outlook();
		Stream<CareTask> ahead = (outlook == null) ? Stream.empty()
				: Stream
					.of(outlook.thisWeek(), outlook.nextWeek(), outlook.open(), outlook.holdOffs(), outlook.changed())
					.flatMap(List::stream);
		Set<String> names = new LinkedHashSet<>();
		Stream.concat(items, ahead).forEach((task) -> names.add(task.siteName()));
		List<String> said = new ArrayList<>(
				names.stream().limit(MOST_SITES).map((name) -> OneLine.apart(wording.site(name))).toList());
		if (names.size() > MOST_SITES) {
			said.add(wording.count(Word.MORE, names.size() - MOST_SITES));
		}
		return String.join(", ", said);
	}

}
