package org.leafward.reminders.core;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.leafward.care.CareTask;
import org.leafward.reminders.core.Letter.Block;
import org.leafward.reminders.core.Letter.Entries;
import org.leafward.reminders.core.Letter.Part;
import org.leafward.reminders.core.Letter.Sentence;

/** This week and the next. */
final class OutlookDraft {

	/** Entries of each list. */
	static final int MOST_ENTRIES = 30;

	private static final int DAYS = 14;

	private final MorningDraft now;

	private final Outlook outlook;

	private final TaskWords words;

	private final Wording wording;

	OutlookDraft(List<ReminderItem> ordered, Outlook outlook, TaskWords words) {
		this.now = new MorningDraft(ordered, words);
		this.outlook = outlook;
		this.words = words;
		this.wording = words.wording();
	}

	Draft draft() {
		List<List<CareTask>> thisWeek = Alike.tasks(this.outlook.thisWeek());
		String today = this.wording.day(this.outlook.today());
		int count = this.now.tasks().size() + thisWeek.size();
		List<String> first = new ArrayList<>();
		this.now.tasks().forEach((group) -> first.add(this.words.heading(TaskWords.tasks(group))));
		thisWeek.stream().limit(MOST_ENTRIES).forEach((group) -> first.add(this.words.heading(group)));
		return new Draft(
				(count == 0) ? this.wording.say(Word.SUBJECT_QUIET, today)
						: this.wording.count(Word.SUBJECT_OUTLOOK, count, today),
				this.wording.say(Word.OPENING_OUTLOOK, today,
						this.wording.day(this.outlook.today().plusDays(DAYS - 1))),
				body(thisWeek), String.join("; ", first), this.words.links().home());
	}

	private List<Block> body(List<List<CareTask>> thisWeek) {
		List<Block> body = new ArrayList<>();
		List<Block> now = this.now.body();
		if (!now.isEmpty()) {
			body.add(new Part(this.wording.say(Word.PART_NOW)));
			body.addAll(now);
		}
		list(body, Word.PART_THIS_WEEK, thisWeek, this::dated);
		list(body, Word.PART_NEXT_WEEK, Alike.tasks(this.outlook.nextWeek()), this::dated);
		list(body, Word.PART_OPEN, Alike.tasks(this.outlook.open()),
				(group) -> this.wording.say(Word.ENTRY_OPEN, this.wording.day(group.get(0).window().to()),
						this.words.heading(group), this.words.site(group.get(0))));
		list(body, Word.PART_HOLD_OFFS, Alike.tasks(this.outlook.holdOffs()), this::dated);
		list(body, Word.PART_NOT_NEEDED, Alike.tasks(this.outlook.changed()),
				(group) -> this.wording.say(Word.ENTRY_NOT_NEEDED, this.words.heading(group),
						this.words.site(group.get(0)), this.words.reason(group.get(0))));
		if (body.isEmpty()) {
			body.add(Sentence.of(this.wording.say(Word.NOTHING)));
		}
		return body;
	}

	private String dated(List<CareTask> group) {
		CareTask task = group.get(0);
		return this.wording.say(Word.ENTRY, this.wording.days(task.window()), this.words.heading(group),
				this.words.site(task));
	}

	private void list(List<Block> body, Word heading, List<List<CareTask>> groups,
			Function<List<CareTask>, String> entry) {
		if (groups.isEmpty()) {
			return;
		}
		List<Sentence> entries = new ArrayList<>();
		groups.stream()
			.limit(MOST_ENTRIES)
			.forEach((group) -> entries
				.add(new Sentence(entry.apply(group), this.words.links().task(group.get(0).id()))));
		if (groups.size() > MOST_ENTRIES) {
			entries.add(new Sentence(this.wording.count(Word.MORE, groups.size() - MOST_ENTRIES),
					this.words.links().home()));
		}
		body.add(new Part(this.wording.say(heading)));
		body.add(new Entries(entries));
	}

}
