package org.leafward.reminders.core;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.leafward.advisories.Advisory;
import org.leafward.advisories.AdvisoryText;
import org.leafward.language.Language;
import org.leafward.reminders.core.AdvisoryNotice.News;
import org.leafward.reminders.core.Letter.Block;
import org.leafward.reminders.core.Letter.Line;
import org.leafward.reminders.core.Letter.Part;
import org.leafward.reminders.core.Letter.Piece;
import org.leafward.reminders.core.Letter.Sentence;

/**
 * Advisories. Their words are those that specialists wrote; what is around them is ours.
 */
final class AdvisoryDraft {

	/** More are not in force in one place; a bound against more. */
	static final int MOST_TOLD = 10;

	private final List<AdvisoryNotice> notices;

	private final Wording wording;

	private final Links links;

	AdvisoryDraft(List<AdvisoryNotice> ordered, Wording wording, Links links) {
		this.notices = ordered;
		this.wording = wording;
		this.links = links;
	}

	/** A message about advisories and nothing else. */
	Draft draft() {
		AdvisoryNotice first = this.notices.get(0);
		if (this.notices.size() == 1) {
			String title = title(first);
			return new Draft(title, title, one(first), this.wording.own(text(first).when()), page(first));
		}
		String subject = this.wording.say(Word.SUBJECT_ADVISORIES, String.valueOf(this.notices.size()), title(first));
		return new Draft(subject, subject, pieces(),
				this.notices.stream().skip(1).limit(MOST_TOLD).map(this::title).collect(Collectors.joining("; ")),
				this.links.home());
	}

	/** What else goes out, with the advisories before it. */
	Draft before(Draft other) {
		List<Block> body = new ArrayList<>();
		body.add(new Part(this.wording.say(Word.PART_ADVISORIES)));
		body.addAll(pieces());
		if (!(other.body().get(0) instanceof Part)) {
			body.add(new Part(this.wording.say(Word.PART_NOW)));
		}
		body.addAll(other.body());
		String first = title(this.notices.get(0));
		return new Draft(this.wording.say(Word.SUBJECT_ADVISORY_TOO, other.subject(), first), other.title(), body,
				other.rest(), this.links.home());
	}

	private List<Block> one(AdvisoryNotice notice) {
		AdvisoryText text = text(notice);
		List<Block> body = new ArrayList<>();
		news(notice).forEach((line) -> body.add(Sentence.of(line.label() + ": " + line.value())));
		if (notice.off()) {
			body.add(Sentence.of(this.wording.say(Word.ADVISORY_OFF)));
		}
		paragraphs(text.what()).forEach(body::add);
		body.add(new Piece(event(notice), about(notice), List.of()));
		body.add(new Part(this.wording.say(Word.LABEL_TO_DO)));
		paragraphs(text.toDo()).forEach(body::add);
		if (!notice.off()) {
			body.add(new Part(this.wording.say(Word.PART_CAUTIONS)));
			body.add(Sentence.of(this.wording.say(Word.ADVISORY_CAUTION)));
		}
		if (englishOnly(notice)) {
			body.add(Sentence.of(this.wording.say(Word.ADVISORY_ENGLISH)));
		}
		body.add(new Sentence(this.wording.say(Word.LINK_ADVISORY), page(notice)));
		return body;
	}

	private List<Block> pieces() {
		List<Block> pieces = new ArrayList<>();
		for (AdvisoryNotice notice : this.notices.stream().limit(MOST_TOLD).toList()) {
			AdvisoryText text = text(notice);
			List<Line> lines = new ArrayList<>(news(notice));
			lines.add(line(notice.off() ? Word.LABEL_NOW : Word.LABEL_COMES, text.what()));
			lines.addAll(about(notice));
			lines.add(line(Word.LABEL_TO_DO, text.toDo()));
			if (!notice.off()) {
				lines
					.add(new Line(this.wording.say(Word.LABEL_CAUTION), this.wording.say(Word.ADVISORY_CAUTION), true));
			}
			pieces.add(new Piece(title(notice), lines,
					List.of(new Sentence(this.wording.say(Word.LINK_ADVISORY), page(notice)))));
		}
		if (this.notices.size() > MOST_TOLD) {
			pieces.add(new Sentence(this.wording.count(Word.MORE, this.notices.size() - MOST_TOLD),
					this.links.home() + "/advisories"));
		}
		return pieces;
	}

	private List<Line> about(AdvisoryNotice notice) {
		AdvisoryText text = text(notice);
		List<Line> lines = new ArrayList<>(
				List.of(line(Word.LABEL_WHERE, text.where()), line(Word.LABEL_WHEN, text.when())));
		if (!notice.off()) {
			lines.add(line(Word.LABEL_IMPACTS, text.impacts()));
		}
		return lines;
	}

	private List<Line> news(AdvisoryNotice notice) {
		String reason = notice.advisory().reason();
		return (notice.news() == News.NEW || reason == null || reason.isBlank()) ? List.of()
				: List.of(line(notice.off() ? Word.LABEL_OFF : Word.LABEL_NEWS, reason));
	}

	private Line line(Word label, String text) {
		return new Line(this.wording.say(label), this.wording.own(text), false);
	}

	private Stream<Sentence> paragraphs(String text) {
		return text.lines().filter((line) -> !line.isBlank()).map((line) -> Sentence.of(this.wording.own(line)));
	}

	private String title(AdvisoryNotice notice) {
		String headline = this.wording.own(text(notice).headline());
		if (notice.off()) {
			return marked(Word.SUBJECT_ADVISORY_OFF, headline);
		}
		return (notice.news() == News.CHANGED) ? marked(Word.SUBJECT_ADVISORY_CHANGED, headline) : headline;
	}

	/** The desk proposes headlines that say so themselves. */
	private String marked(Word mark, String headline) {
		String marked = this.wording.say(mark, headline);
		int at = marked.indexOf(headline);
		return (at > 0 && headline.startsWith(marked.substring(0, at))) ? headline : marked;
	}

	private String event(AdvisoryNotice notice) {
		Advisory advisory = notice.advisory();
		return this.wording.own(advisory.event().in(language()));
	}

	private AdvisoryText text(AdvisoryNotice notice) {
		return notice.advisory().text(language());
	}

	private boolean englishOnly(AdvisoryNotice notice) {
		@Nullable AdvisoryText spanish = notice.advisory().spanish();
		return language() == Language.SPANISH && spanish == null;
	}

	private Language language() {
		return this.wording.book().language();
	}

	private String page(AdvisoryNotice notice) {
		return this.links.home() + notice.advisory().path();
	}

}
