package org.leafward.lookalikes.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.lookalikes.CaseEnds;
import org.leafward.lookalikes.CaseLook;
import org.leafward.lookalikes.Cases;
import org.leafward.lookalikes.PlantCase;
import org.leafward.lookalikes.core.Answer;
import org.leafward.lookalikes.core.Question;
import org.leafward.lookalikes.core.RecordLine;
import org.leafward.measure.BadInput;
import org.leafward.measure.Given;
import org.leafward.register.OpenSites;
import org.leafward.register.PlantingId;
import org.leafward.register.SiteId;
import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;

/** One's own cases by API. */
@RestController
@Tag(name = "Cases", description = "Plants that look wrong: questions, answers, and what it may be. Never certain.")
@RequestMapping("/api/v1/cases")
class CaseApi {

	private final Cases cases;

	private final CaseEnds ends;

	private final CaseAccess access;

	private final NewCasePages begin;

	private final OpenSites sites;

	CaseApi(Cases cases, CaseEnds ends, CaseAccess access, NewCasePages begin, OpenSites sites) {
		this.cases = cases;
		this.ends = ends;
		this.access = access;
		this.begin = begin;
		this.sites = sites;
	}

	/** What a case begins with: a planting, or the name of a plant. */
	record CaseRequest(@Nullable UUID planting, @Nullable String plant, @Nullable String county,
			@Nullable String seen) {
	}

	/** What is ticked of a question. */
	record AnswerRequest(@Nullable List<String> answers) {
	}

	/** What something is taken for. */
	record FollowUpRequest(@Nullable String cause) {
	}

	/** A case in a list. */
	record CaseRow(UUID id, String plant, @Nullable UUID site, @Nullable UUID planting, LocalDate seen, String state,
			@Nullable String leading, @Nullable String cause, @Nullable LocalDate closedOn) {

		static CaseRow of(PlantCase one) {
			SiteId site = one.site();
			PlantingId planting = one.planting();
			return new CaseRow(one.id().value(), one.plant(), (site != null) ? site.value() : null,
					(planting != null) ? planting.value() : null, one.seen(),
					one.state().name().toLowerCase(Locale.ROOT), one.leading(), one.cause(), one.closedOn());
		}

	}

	/** An answer that can be ticked. */
	record Tick(String id, String words, String help) {

		static Tick of(Answer one) {
			return new Tick(one.id(), one.words(), one.help());
		}

	}

	/**
	 * A question; "cannot-tell" is always an answer, "none" where several can be ticked.
	 */
	record Asked(String id, String text, String help, boolean several, List<Tick> answers) {

		static Asked of(Question one) {
			return new Asked(one.id(), one.text(), one.help(), one.several(),
					one.answers().stream().map(Tick::of).toList());
		}

	}

	/** What was ticked of a question. */
	record Ticked(String question, List<String> answers) {
	}

	/** A line of the record. */
	record Recorded(String id, String words, String from, boolean struck) {
	}

	/** A cause with what speaks for and against it; its share is no certainty. */
	record Found(String cause, String title, double share, String how, boolean laboratory, List<String> reasonsFor,
			List<String> against, List<String> settle) {
	}

	/** A case with what follows from it. */
	record CaseAnswer(CaseRow plantCase, List<Ticked> answers, @Nullable Asked next, List<Recorded> record,
			List<Found> findings) {
	}

	@Operation(summary = "Open a case for a planting, or for a plant by name")
	@PostMapping
	@ResponseStatus(HttpStatus.CREATED)
	CaseAnswer open(@RequestBody CaseRequest request) {
		UUID planting = request.planting();
		String seen = Optional.ofNullable(request.seen()).orElse("");
		PlantCase one = (planting != null)
				? this.begin.ofPlanting(this.sites.planting(planting), Given.date("seen", seen))
				: this.begin.ofStranger(Optional.ofNullable(request.plant()).orElse(""),
						Optional.ofNullable(request.county()).orElse(""), seen);
		return answer(one);
	}

	@Operation(summary = "One's own cases, the newest first")
	@GetMapping
	List<CaseRow> list(@RequestParam(defaultValue = "0") int page, @RequestParam(defaultValue = "50") int size) {
		int from = Given.page(page);
		int many = Given.size(size);
		return Optional.ofNullable(this.access.me())
			.map((me) -> this.cases.ofPerson(me, from, many))
			.orElse(List.of())
			.stream()
			.map(CaseRow::of)
			.toList();
	}

	@Operation(summary = "A case: its answers, the next question, the record, what it may be")
	@GetMapping("/{id}")
	CaseAnswer read(@PathVariable UUID id) {
		return answer(this.access.own(id));
	}

	@Operation(summary = "Answer a question, or change its answer")
	@PutMapping("/{id}/answers/{question}")
	CaseAnswer tick(@PathVariable UUID id, @PathVariable String question, @RequestBody AnswerRequest request) {
		PlantCase one = this.access.own(id);
		return answer(this.cases.answer(one.id(), question,
				new HashSet<>(Optional.ofNullable(request.answers()).orElse(List.of()))));
	}

	@Operation(summary = "Take an answer back")
	@DeleteMapping("/{id}/answers/{question}")
	CaseAnswer takeBack(@PathVariable UUID id, @PathVariable String question) {
		return answer(this.cases.takeBack(this.access.own(id).id(), question));
	}

	@Operation(summary = "Take something for the cause and put what follows onto the calendar")
	@PostMapping("/{id}/follow-up")
	CaseAnswer followUp(@PathVariable UUID id, @RequestBody FollowUpRequest request) {
		PlantCase one = this.access.own(id);
		String cause = request.cause();
		if (cause == null || cause.isBlank()) {
			throw new BadInput("cause is missing", "cause", "name one of the findings");
		}
		return answer(this.ends.followUp(one.id(), cause));
	}

	@Operation(summary = "Delete a case with its photos and notes")
	@DeleteMapping("/{id}")
	@ResponseStatus(HttpStatus.NO_CONTENT)
	void remove(@PathVariable UUID id) {
		this.cases.delete(this.access.own(id).id());
	}

	private CaseAnswer answer(PlantCase one) {
		CaseLook look = this.cases.look(one);
		return new CaseAnswer(CaseRow.of(one),
				one.answers()
					.given()
					.entrySet()
					.stream()
					.map((given) -> new Ticked(given.getKey(), List.copyOf(given.getValue())))
					.toList(),
				look.next().map(Asked::of).orElse(null),
				look.record().stream().map((line) -> recorded(look, line)).toList(),
				look.ranking()
					.shown()
					.stream()
					.filter((found) -> look.ranking().known())
					.map((found) -> new Found(found.cause().id(), found.cause().title(),
							Math.round(found.share() * 1000) / 1000.0, CaseLead.how(found), found.cause().laboratory(),
							found.reasonsFor().stream().map((why) -> why.words()).toList(),
							found.against().stream().map((why) -> why.words()).toList(), found.settle()))
					.toList());
	}

	private static Recorded recorded(CaseLook look, RecordLine line) {
		return new Recorded(line.id(), line.words(), line.from(), look.struck(line));
	}

}
