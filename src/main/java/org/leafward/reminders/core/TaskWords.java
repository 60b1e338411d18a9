package org.leafward.reminders.core;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.leafward.care.CareTask;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskText;
import org.leafward.reminders.Topic;
import org.leafward.reminders.core.Letter.Line;
import org.leafward.reminders.core.Letter.Piece;
import org.leafward.reminders.core.Letter.Sentence;
import org.leafward.reminders.core.Links.Act;

/**
 * What a message says about alike tasks.
 *
 * @param wording language and units of the reader
 * @param links addresses
 */
record TaskWords(Wording wording, Links links) {

	/** Plantings that are named in one line; a bound for its length. */
	private static final int MOST_NAMED = 40;

	/** How much later the second word comes, in days. */
	private static final int LATER_DAYS = 3;

	/**
	 * The name of alike tasks.
	 * @param tasks at least one
	 * @return title and plant, or title and number of plantings
	 */
	String heading(List<CareTask> tasks) {
		String title = title(tasks.get(0));
		return (tasks.size() == 1)
				? this.wording.say(Word.HEADING_ONE, title, OneLine.apart(this.wording.plant(tasks.get(0).plant())))
				: this.wording.say(Word.HEADING_MANY, title, String.valueOf(tasks.size()));
	}

	private String title(CareTask task) {
		String title = this.wording.said(task.text().title());
		return (task.kind() == TaskKind.HOLD_OFF) ? this.wording.leave(title) : title;
	}

	String site(CareTask task) {
		return OneLine.apart(this.wording.site(task.siteName()));
	}

	/**
	 * The plantings of alike tasks.
	 * @param tasks at least one
	 * @return their names with semicolons between
	 */
	String plants(List<CareTask> tasks) {
		List<String> names = new ArrayList<>(
				tasks.stream().map((task) -> OneLine.apart(this.wording.plant(task.plant()))).sorted().toList());
		int more = names.size() - MOST_NAMED;
		if (more > 0) {
			names.subList(MOST_NAMED, names.size()).clear();
			names.add(this.wording.count(Word.MORE, more));
		}
		return String.join("; ", names);
	}

	/** Why a task fell away. */
	String reason(CareTask task) {
		String because = task.withdrawnBecause();
		return (because == null || because.isBlank()) ? this.wording.say(Word.NO_REASON) : this.wording.said(because);
	}

	/**
	 * Tells alike tasks whole.
	 * @param items at least one
	 * @param cautions whether their caution is among it
	 * @return the piece
	 */
	Piece piece(List<ReminderItem> items, boolean cautions) {
		List<CareTask> tasks = tasks(items);
		CareTask task = tasks.get(0);
		TaskText text = task.text();
		boolean ramp = task.kind() == TaskKind.RAMP_DAY;
		List<Line> lines = new ArrayList<>();
		add(lines, Word.LABEL_WHEN, this.wording.days(task.window()));
		place(lines, tasks);
		if (ramp) {
			int days = items.get(0).rampDays();
			add(lines, Word.LABEL_RAMP, (days <= 1) ? this.wording.say(Word.RAMP_ONE) : this.wording.say(Word.RAMP_DAY,
					String.valueOf(Math.max(task.occurrence(), 1)), String.valueOf(days)));
		}
		told(lines, (task.kind() == TaskKind.HOLD_OFF) ? Word.LABEL_LEAVE : Word.LABEL_WHAT, text.what());
		amounts(lines, ramp ? Word.LABEL_PLACE : Word.LABEL_AMOUNT, tasks);
		told(lines, Word.LABEL_WHY, text.why());
		told(lines, Word.LABEL_OTHERWISE, text.otherwise());
		if (cautions) {
			told(lines, Word.LABEL_CAUTION, text.caution());
		}
		return new Piece(heading(tasks), lines, links(items.get(0)));
	}

	/**
	 * Tells what became of alike tasks that were told before.
	 * @param items at least one, about a change
	 * @return the piece
	 */
	Piece change(List<ReminderItem> items) {
		ReminderItem item = items.get(0);
		List<CareTask> tasks = tasks(items);
		List<Line> lines = new ArrayList<>();
		if (item.fellAway()) {
			add(lines, Word.LABEL_NOT_NEEDED, reason(item.task()));
			add(lines, Word.LABEL_WHEN, this.wording.days(item.task().window()));
		}
		else {
			add(lines, Word.LABEL_MOVED, this.wording.days(item.task().window()));
			if (item.toldDay() != null) {
				add(lines, Word.LABEL_BEFORE, this.wording.day(item.toldDay()));
			}
		}
		place(lines, tasks);
		return new Piece(heading(tasks), lines, links(item));
	}

	private void place(List<Line> lines, List<CareTask> tasks) {
		add(lines, Word.LABEL_WHERE, site(tasks.get(0)));
		if (tasks.size() > 1) {
			add(lines, Word.LABEL_PLANTS, plants(tasks));
		}
	}

	/** Plantings of different sizes take different amounts. */
	private void amounts(List<Line> lines, Word label, List<CareTask> tasks) {
		Map<String, List<CareTask>> amounts = new LinkedHashMap<>();
		for (CareTask task : tasks) {
			String amount = task.text().amount();
			amounts.computeIfAbsent((amount != null) ? amount : "", (key) -> new ArrayList<>()).add(task);
		}
		amounts.forEach((amount, of) -> {
			if (amounts.size() == 1) {
				told(lines, label, amount);
			}
			else if (!amount.isBlank()) {
				add(lines, label, this.wording.say(Word.AMOUNT_OF, plants(of), this.wording.said(amount)));
			}
		});
	}

	/**
	 * What can be opened from a piece. Of several plantings it is the link of the first,
	 * and the acting side acts on all tasks of the same message that are told with it
	 * ({@link Alike#told}).
	 */
	private List<Sentence> links(ReminderItem item) {
		List<Sentence> sentences = new ArrayList<>();
		sentences.add(new Sentence(this.wording.say(Word.LINK_DETAILS), this.links.task(item.task().id())));
		for (Act act : acts(item)) {
			sentences.add(new Sentence(this.wording.say(word(act, item.task())), this.links.act(item.reminder(), act)));
		}
		return sentences;
	}

	/**
	 * What can be done about a task. A hold-off is nothing to do. One looks for something
	 * until it is there, so there is no "done" either. A night and a day of a ramp come
	 * once; and there is no later for what is over by then.
	 */
	private static List<Act> acts(ReminderItem item) {
		CareTask task = item.task();
		boolean once = item.topic() == Topic.TONIGHT || task.kind() == TaskKind.RAMP_DAY;
		List<Act> acts = new ArrayList<>();
		if (task.kind() == TaskKind.HOLD_OFF || item.fellAway()) {
			return acts;
		}
		if (task.kind() != TaskKind.WATCH) {
			acts.add(Act.DONE);
		}
		if (!once && item.topic() != Topic.CHANGE && task.window().days() > LATER_DAYS) {
			acts.add(Act.LATER);
		}
		if (!once) {
			acts.add(Act.SKIP);
		}
		return acts;
	}

	private static Word word(Act act, CareTask task) {
		return switch (act) {
			case DONE -> Word.LINK_DONE;
			case LATER -> Word.LINK_LATER;
			case SKIP -> (task.occurrence() > 0) ? Word.LINK_SKIP_TURN : Word.LINK_SKIP;
		};
	}

	private void told(List<Line> lines, Word label, @Nullable String english) {
		if (english != null && !english.isBlank()) {
			add(lines, label, this.wording.said(english));
		}
	}

	private void add(List<Line> lines, Word label, String value) {
		lines.add(new Line(this.wording.say(label), value, label == Word.LABEL_CAUTION));
	}

	static List<CareTask> tasks(List<ReminderItem> items) {
		return items.stream().map(ReminderItem::task).toList();
	}

}
