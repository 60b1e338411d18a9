package org.leafward.lookalikes.web;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.leafward.lookalikes.CaseLook;
import org.leafward.lookalikes.core.Answer;
import org.leafward.lookalikes.core.Answers;
import org.leafward.lookalikes.core.Finding;
import org.leafward.lookalikes.core.Question;
import org.leafward.lookalikes.core.Reason;
import org.leafward.lookalikes.core.RecordLine;
import org.leafward.lookalikes.core.Reference;
import org.leafward.lookalikes.core.Sample;

/** What the page of a case shows, in words. */
final class CaseView {

	/** Reasons of a kind that anybody reads. */
	private static final int MOST_REASONS = 6;

	private CaseView() {
	}

	/**
	 * A cause on the page.
	 *
	 * @param id its identifier
	 * @param title its name, suspected where it is
	 * @param how how sure
	 * @param percent for the bar, 0 to 97
	 * @param tells what tells it apart
	 * @param reasonsFor what speaks for it
	 * @param against what speaks against it
	 * @param settle what would settle it
	 * @param outlook what to expect
	 * @param regulated whether an authority must hear of it
	 * @param sources where this comes from
	 */
	record Shown(String id, String title, String how, int percent, String tells, List<Why> reasonsFor,
			List<Why> against, List<String> settle, String outlook, boolean regulated, List<String> sources) {
	}

	/**
	 * A reason.
	 *
	 * @param words what it is
	 * @param strength how much it speaks
	 * @param from where in the record it stands; null when somebody answered it
	 */
	record Why(String words, String strength, @Nullable String from) {
	}

	/**
	 * Two causes that can't be parted.
	 *
	 * @param one a cause
	 * @param other another
	 * @param split what parts them
	 */
	record Split(String one, String other, String split) {
	}

	/**
	 * A question that was answered.
	 *
	 * @param id its identifier
	 * @param text the question
	 * @param answers what was answered
	 * @param before whether the former case had the same answer, and so it may only have
	 * been taken over
	 */
	record Answered(String id, String text, List<String> answers, boolean before) {
	}

	/**
	 * A line of the record.
	 *
	 * @param id names it
	 * @param words what it says
	 * @param from where that comes from
	 * @param struck whether it doesn't count
	 */
	record Line(String id, String words, String from, boolean struck) {
	}

	/**
	 * A sample that would settle something.
	 *
	 * @param cause for which cause
	 * @param title its name
	 * @param sample how it is taken
	 * @param inSeason whether it can be taken now
	 */
	record ToSend(String cause, String title, Sample sample, boolean inSeason) {
	}

	static List<Shown> shown(CaseLook look) {
		return look.ranking().shown().stream().map(CaseView::shown).toList();
	}

	private static Shown shown(Finding one) {
		return new Shown(one.cause().id(), one.cause().title(), CaseLead.how(one),
				(int) Math.min(97, Math.round(one.share() * 100)), one.cause().tells(), whys(one.reasonsFor()),
				whys(one.against()), one.settle(), one.cause().outlook(), one.cause().regulated(),
				one.cause().references().stream().map(Reference::words).toList());
	}

	private static List<Why> whys(List<Reason> reasons) {
		return reasons.stream().limit(MOST_REASONS).map((one) -> {
			RecordLine line = one.line();
			return new Why(one.words(), one.strength().words(), (line != null) ? line.from() : null);
		}).toList();
	}

	static List<Split> splits(CaseLook look) {
		return look.ranking()
			.unsplit()
			.stream()
			.map((pair) -> new Split(name(look, pair.one()), name(look, pair.other()), pair.split()))
			.toList();
	}

	static String name(CaseLook look, String cause) {
		return look.key().cause(cause).map((one) -> one.name()).orElse(cause);
	}

	static List<Answered> answered(CaseLook look) {
		return answered(look, Answers.EMPTY);
	}

	static List<Answered> answered(CaseLook look, Answers former) {
		Answers answers = look.plantCase().answers();
		return answers.given()
			.keySet()
			.stream()
			.flatMap((id) -> look.key().question(id).stream())
			.map((question) -> new Answered(question.id(), question.text(), words(question, answers.of(question.id())),
					!question.eachTime() && answers.of(question.id()).equals(former.of(question.id()))))
			.toList();
	}

	private static List<String> words(Question question, Set<String> ticked) {
		if (ticked.contains(Answers.CANNOT_TELL)) {
			return List.of("Can’t tell");
		}
		if (ticked.contains(Answers.NONE)) {
			return List.of(none(question));
		}
		return question.answers().stream().filter((one) -> ticked.contains(one.id())).map(Answer::words).toList();
	}

	/** A question with one answer is a question of yes or no. */
	static String none(Question question) {
		return (question.answers().size() == 1) ? "No" : "None of these";
	}

	static List<Line> record(CaseLook look) {
		return look.record()
			.stream()
			.map((line) -> new Line(line.id(), line.words(), line.from(), look.struck(line)))
			.toList();
	}

	static List<ToSend> samples(CaseLook look, LocalDate today, boolean south) {
		return look.ranking().shown().stream().flatMap((one) -> {
			Sample sample = one.cause().sample();
			return (sample != null) ? Stream
				.of(new ToSend(one.cause().id(), one.cause().title(), sample, sample.inSeason(today.getMonth(), south)))
					: Stream.empty();
		}).toList();
	}

}
