package org.leafward.reminders.core;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.leafward.care.CareTask;
import org.leafward.reminders.Topic;
import org.leafward.reminders.core.Letter.Block;
import org.leafward.reminders.core.Letter.Part;
import org.leafward.reminders.core.Letter.Sentence;

/** What falls on a morning, or one thing. */
final class MorningDraft {

	/**
	 * Alike tasks that are told whole; mail programs cut off what is longer than 100 kB.
	 */
	static final int MOST_TOLD = 30;

	private final List<List<ReminderItem>> tasks;

	private final List<List<ReminderItem>> changes;

	private final TaskWords words;

	private final Wording wording;

	MorningDraft(List<ReminderItem> ordered, TaskWords words) {
		this.tasks = Alike.items(ordered.stream().filter((item) -> item.topic() != Topic.CHANGE).toList());
		this.changes = Alike.items(ordered.stream().filter((item) -> item.topic() == Topic.CHANGE).toList());
		this.words = words;
		this.wording = words.wording();
	}

	Draft draft() {
		return new Draft(subject(), opening(), body(), rest(), link());
	}

	List<List<ReminderItem>> tasks() {
		return this.tasks;
	}

	List<Block> body() {
		List<Block> body = new ArrayList<>();
		told(body, this.tasks, true);
		if (!this.tasks.isEmpty() && !this.changes.isEmpty()) {
			body.add(new Part(this.wording.say(Word.PART_CHANGES)));
		}
		told(body, this.changes, false);
		return body;
	}

	private void told(List<Block> body, List<List<ReminderItem>> groups, boolean tasks) {
		groups.stream()
			.limit(MOST_TOLD)
			.forEach((group) -> body.add(tasks ? this.words.piece(group, true) : this.words.change(group)));
		if (groups.size() > MOST_TOLD) {
			body.add(new Sentence(this.wording.count(Word.MORE, groups.size() - MOST_TOLD), this.words.links().home()));
		}
	}

	private String subject() {
		if (!this.tasks.isEmpty()) {
			return this.wording.count(Word.SUBJECT_TASKS, this.tasks.size(), this.wording.day(first(this.tasks)),
					heading(this.tasks.get(0)));
		}
		ReminderItem item = this.changes.get(0).get(0);
		String day = this.wording.day(item.task().window().from());
		String heading = heading(this.changes.get(0));
		if (this.changes.size() > 1) {
			return this.wording.say(Word.SUBJECT_CHANGES, day, String.valueOf(this.changes.size()), heading);
		}
		return this.wording.say(item.fellAway() ? Word.SUBJECT_NOT_NEEDED : Word.SUBJECT_MOVED, day, heading);
	}

	private String opening() {
		List<String> sentences = new ArrayList<>();
		if (this.tasks.size() == 1) {
			CareTask task = this.tasks.get(0).get(0).task();
			Word word = switch (task.kind()) {
				case DO -> Word.OPENING_DO;
				case HOLD_OFF -> Word.OPENING_HOLD_OFF;
				case RAMP_DAY -> Word.OPENING_RAMP;
				case WATCH -> Word.OPENING_WATCH;
			};
			sentences.add(this.wording.say(word, this.wording.days(task.window())));
		}
		else if (!this.tasks.isEmpty()) {
			sentences.add(several());
		}
		if (!this.changes.isEmpty()) {
			sentences.add(this.wording.count(Word.OPENING_CHANGES, this.changes.size()));
		}
		return String.join(sentences.get(0).endsWith(".") ? " " : ". ", sentences);
	}

	/** Without a tense: a message may leave some days after the first day. */
	private String several() {
		String count = String.valueOf(this.tasks.size());
		LocalDate first = first(this.tasks);
		LocalDate last = this.tasks.stream().map(MorningDraft::from).max(LocalDate::compareTo).orElse(first);
		return first.equals(last) ? this.wording.say(Word.OPENING_TASKS, count, this.wording.day(first))
				: this.wording.say(Word.OPENING_SPREAD, count, this.wording.day(first), this.wording.day(last));
	}

	private static LocalDate first(List<List<ReminderItem>> groups) {
		return groups.stream().map(MorningDraft::from).min(LocalDate::compareTo).orElseThrow();
	}

	private static LocalDate from(List<ReminderItem> group) {
		return group.get(0).task().window().from();
	}

	private String heading(List<ReminderItem> group) {
		return this.words.heading(TaskWords.tasks(group));
	}

	private List<List<ReminderItem>> all() {
		List<List<ReminderItem>> all = new ArrayList<>(this.tasks);
		all.addAll(this.changes);
		return all;
	}

	/** The subject has named the first one. */
	private String rest() {
		List<List<ReminderItem>> all = all();
		return (all.size() == 1) ? this.words.site(all.get(0).get(0).task())
				: all.stream().skip(1).limit(MOST_TOLD).map(this::heading).collect(Collectors.joining("; "));
	}

	private String link() {
		List<List<ReminderItem>> all = all();
		return (all.size() == 1) ? this.words.links().task(all.get(0).get(0).task().id()) : this.words.links().home();
	}

}
