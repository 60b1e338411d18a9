package org.leafward.reminders.core;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.leafward.care.CareTask;
import org.leafward.register.SiteId;
import org.leafward.reminders.core.Letter.Block;
import org.leafward.reminders.core.Letter.Entries;
import org.leafward.reminders.core.Letter.Part;
import org.leafward.reminders.core.Letter.Sentence;

/**
 * The warning of a cold night. Read in a hurry, so it begins with what to cover where,
 * and what can hurt someone comes before how it is done.
 */
final class NightDraft {

	/** Sites in the list of what to cover, more than entries of any other list. */
	private static final int MOST_SITES = 100;

	private final List<ReminderItem> items;

	private final List<List<ReminderItem>> groups;

	private final TaskWords words;

	private final Wording wording;

	NightDraft(List<ReminderItem> ordered, TaskWords words) {
		this.items = ordered;
		this.groups = Alike.items(ordered);
		this.words = words;
		this.wording = words.wording();
	}

	Draft draft() {
		CareTask first = this.items.get(0).task();
		LocalDate night = first.window().from();
		int plantings = this.items.size();
		String day = this.wording.day(night);
		List<Sentence> cover = cover();
		return new Draft(this.wording.count(Word.SUBJECT_NIGHT, plantings, day, this.words.heading(List.of(first))),
				this.wording.count(Word.OPENING_NIGHT, plantings, day, this.wording.day(night.plusDays(1))),
				body(cover), cover.stream().map(Sentence::words).collect(Collectors.joining(". ")),
				(this.groups.size() == 1) ? this.words.links().task(first.id()) : this.words.links().home());
	}

	private List<Block> body(List<Sentence> cover) {
		List<Block> body = new ArrayList<>();
		body.add(new Part(this.wording.say(Word.PART_COVER)));
		body.add(new Entries(cover));
		List<Sentence> cautions = cautions();
		if (!cautions.isEmpty()) {
			body.add(new Part(this.wording.say(Word.PART_CAUTIONS)));
			body.add(new Entries(cautions));
		}
		body.add(new Part(this.wording.say(Word.PART_HOW)));
		this.groups.stream().limit(MorningDraft.MOST_TOLD).forEach((group) -> body.add(this.words.piece(group, false)));
		if (this.groups.size() > MorningDraft.MOST_TOLD) {
			body.add(more(this.groups.size() - MorningDraft.MOST_TOLD));
		}
		return body;
	}

	private List<Sentence> cover() {
		Map<SiteId, List<CareTask>> sites = new LinkedHashMap<>();
		this.items
			.forEach((item) -> sites.computeIfAbsent(item.task().site(), (key) -> new ArrayList<>()).add(item.task()));
		List<Sentence> cover = new ArrayList<>();
		sites.values()
			.stream()
			.limit(MOST_SITES)
			.forEach((tasks) -> cover.add(Sentence
				.of(this.wording.say(Word.ENTRY_COVER, this.words.site(tasks.get(0)), this.words.plants(tasks)))));
		if (sites.size() > MOST_SITES) {
			cover.add(more(sites.size() - MOST_SITES));
		}
		return cover;
	}

	private Sentence more(int count) {
		return new Sentence(this.wording.count(Word.MORE, count), this.words.links().home());
	}

	private List<Sentence> cautions() {
		return this.items.stream()
			.map((item) -> item.task().text().caution())
			.filter(Objects::nonNull)
			.filter((caution) -> !caution.isBlank())
			.distinct()
			.map((caution) -> Sentence.of(this.wording.said(caution)))
			.toList();
	}

}
