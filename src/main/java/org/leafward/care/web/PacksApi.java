package org.leafward.care.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.care.PackVersion;
import org.leafward.care.RulePreview;
import org.leafward.care.RulePreviews;
import org.leafward.care.workshop.PackDrafted;
import org.leafward.care.workshop.PackHistory;
import org.leafward.care.workshop.PublishConflict;
import org.leafward.care.workshop.Workshop;
import org.leafward.knowledge.BrokenKnowledge;
import org.leafward.measure.BadInput;
import org.leafward.measure.Given;
import org.leafward.pages.Viewers;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ProblemDetail;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;

/** Rule packs and their versions by API. */
@RestController
@Tag(name = "Rule packs", description = "Versions of the rules: what a draft would change, publishing, going back")
@RequestMapping("/api/v1/packs")
class PacksApi {

	private final Workshop workshop;

	private final PackHistory history;

	private final RulePreviews previews;

	private final Viewers viewers;

	PacksApi(Workshop workshop, PackHistory history, RulePreviews previews, Viewers viewers) {
		this.workshop = workshop;
		this.history = history;
		this.previews = previews;
		this.viewers = viewers;
	}

	/**
	 * A draft as given.
	 *
	 * @param base the version that it began with, 0 for a new pack; not needed for a
	 * preview
	 * @param content the whole pack, YAML; its version is replaced by the next one
	 * @param note what was changed and why; not needed for a preview
	 */
	record DraftRequest(@Nullable Integer base, @Nullable String content, @Nullable String note) {
	}

	/**
	 * A way back as given.
	 *
	 * @param base the version that is in use now
	 * @param note why
	 */
	record BackRequest(@Nullable Integer base, @Nullable String note) {
	}

	/**
	 * A version as answered.
	 *
	 * @param pack id of the pack
	 * @param version its version
	 * @param origin file or workshop
	 * @param note what was changed and why
	 * @param changed rules that were added, changed or taken out in it
	 * @param by who published it
	 * @param person their identifier
	 * @param at when
	 */
	record VersionAnswer(String pack, int version, String origin, String note, List<String> changed, String by,
			@Nullable UUID person, Instant at) {

		static VersionAnswer of(PackVersion one) {
			return new VersionAnswer(one.pack(), one.version(), Kinds.code(one.origin()), one.note(), one.changed(),
					one.by(), one.person(), one.at());
		}

	}

	/**
	 * What publishing would do.
	 *
	 * @param version the version that it would get
	 * @param changed rules that it adds, changes or takes out
	 * @param contradictions tasks that would newly fall into hold-offs
	 * @param tasks the tasks of the register's sites
	 */
	record PreviewAnswer(int version, List<String> changed, List<String> contradictions, RulePreview tasks) {

		static PreviewAnswer of(PackDrafted draft, RulePreview preview) {
			return new PreviewAnswer(draft.version(), draft.changed(),
					draft.contradictions().stream().map((one) -> one.words()).toList(), preview);
		}

	}

	@Operation(summary = "The newest version of each pack")
	@GetMapping
	List<VersionAnswer> packs() {
		return this.history.newest().stream().map(VersionAnswer::of).toList();
	}

	@Operation(summary = "Versions of a pack, newest first")
	@GetMapping("/{pack}/versions")
	List<VersionAnswer> versions(@PathVariable String pack, @RequestParam(defaultValue = "0") int page,
			@RequestParam(defaultValue = "50") int size) {
		return this.history.versions(pack, Given.page(page), Given.size(size)).stream().map(VersionAnswer::of).toList();
	}

	@Operation(summary = "The pack as a file in one of its versions")
	@GetMapping(path = "/{pack}/versions/{version}", produces = "application/yaml")
	ResponseEntity<byte[]> file(@PathVariable String pack, @PathVariable int version) {
		return WorkshopPages.download(this.history.require(pack, version));
	}

	@Operation(summary = "What a draft would change; writes nothing")
	@PostMapping("/{pack}/preview")
	PreviewAnswer preview(@PathVariable String pack, @RequestBody DraftRequest request) {
		PackDrafted draft = this.workshop.draft(pack, Given.text("content", request.content()));
		return PreviewAnswer.of(draft, this.previews.of(draft.packs()));
	}

	@Operation(summary = "Publish a draft as the next version")
	@PostMapping("/{pack}/versions")
	@ResponseStatus(HttpStatus.CREATED)
	VersionAnswer publish(@PathVariable String pack, @RequestBody DraftRequest request) {
		return VersionAnswer
			.of(this.workshop.publish(pack, base(request.base()), Given.text("content", request.content()),
					Given.text("note", request.note()), WorkshopPages.author(this.viewers)));
	}

	@Operation(summary = "Publish the content of an older version anew")
	@PostMapping("/{pack}/versions/{version}/back")
	@ResponseStatus(HttpStatus.CREATED)
	VersionAnswer back(@PathVariable String pack, @PathVariable int version, @RequestBody BackRequest request) {
		return VersionAnswer.of(this.workshop.goBack(pack, base(request.base()), version,
				Given.text("note", request.note()), WorkshopPages.author(this.viewers)));
	}

	private static int base(@Nullable Integer base) {
		if (base == null || base < 0) {
			throw new BadInput("base is missing", "base",
					"give the version that the draft began with, 0 for a new pack");
		}
		return base;
	}

	/** Problems of the text by line, as for any other refusal. */
	@ExceptionHandler
	ResponseEntity<ProblemDetail> broken(BrokenKnowledge ex) {
		ProblemDetail problem = ProblemDetail.forStatusAndDetail(HttpStatus.BAD_REQUEST, ex.problems().get(0).what());
		problem.setProperty("where", "content, line " + ex.problems().get(0).line());
		problem.setProperty("mend", ex.problems().get(0).mend());
		problem.setProperty("problems", ex.problems());
		return ResponseEntity.badRequest().contentType(MediaType.APPLICATION_PROBLEM_JSON).body(problem);
	}

	@ExceptionHandler
	ResponseEntity<ProblemDetail> conflict(PublishConflict ex) {
		ProblemDetail problem = ProblemDetail.forStatusAndDetail(HttpStatus.CONFLICT, String.valueOf(ex.getMessage()));
		problem.setProperty("where", "base");
		problem.setProperty("mend",
				"take over what changed in between, then send it with base %d".formatted(ex.newest().version()));
		problem.setProperty("changes", ex.changes());
		return ResponseEntity.status(HttpStatus.CONFLICT).contentType(MediaType.APPLICATION_PROBLEM_JSON).body(problem);
	}

}
