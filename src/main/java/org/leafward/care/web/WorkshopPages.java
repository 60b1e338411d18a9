package org.leafward.care.web;

import jakarta.servlet.http.HttpServletResponse;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leafward.care.PackVersion;
import org.leafward.care.RulePacks;
import org.leafward.care.core.rule.RulePack;
import org.leafward.care.pack.PublishedRulePacks;
import org.leafward.care.workshop.Author;
import org.leafward.care.workshop.PackHistory;
import org.leafward.care.workshop.PublishConflict;
import org.leafward.care.workshop.Workshop;
import org.leafward.knowledge.BrokenKnowledge;
import org.leafward.measure.BadInput;
import org.leafward.measure.DayWords;
import org.leafward.measure.Given;
import org.leafward.measure.NotThere;
import org.leafward.pages.Viewer;
import org.leafward.pages.Viewers;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The packs, their versions, and the way back to an older one; for specialists. */
@Controller
class WorkshopPages {

	private static final int SIZE = 20;

	private final PublishedRulePacks packs;

	private final Workshop workshop;

	private final PackHistory history;

	private final Viewers viewers;

	WorkshopPages(PublishedRulePacks packs, Workshop workshop, PackHistory history, Viewers viewers) {
		this.packs = packs;
		this.workshop = workshop;
		this.history = history;
		this.viewers = viewers;
	}

	/**
	 * A pack in the list.
	 *
	 * @param id its id
	 * @param title its title
	 * @param more version, number of rules, and who changed it
	 */
	record PackLine(String id, String title, String more) {
	}

	/**
	 * A version in the list.
	 *
	 * @param version its number
	 * @param words when, by whom and why
	 * @param changed how many rules it changed
	 */
	record VersionLine(int version, String words, int changed) {
	}

	static String words(PackVersion version) {
		return "%s, %s: %s".formatted(DayWords.of(LocalDate.ofInstant(version.at(), ZoneOffset.UTC)), version.by(),
				version.note());
	}

	static Author author(Viewers viewers) {
		Viewer viewer = viewers.current();
		return new Author(viewer.name(), viewer.person());
	}

	@GetMapping("/workshop")
	String packs(Model model) {
		fill(model);
		return "care/workshop";
	}

	void fill(Model model) {
		RulePacks now = this.packs.latest();
		List<PackVersion> newest = this.history.newest();
		List<PackLine> lines = new ArrayList<>();
		for (RulePack pack : now.all()) {
			String last = newest.stream()
				.filter((one) -> one.pack().equals(pack.id()))
				.findFirst()
				.map((one) -> "; " + words(one))
				.orElse("");
			lines.add(new PackLine(pack.id(), pack.title(),
					"version %d, %d rules%s".formatted(pack.version(), pack.rules().size(), last)));
		}
		model.addAttribute("section", "rules");
		model.addAttribute("packs", lines);
		model.addAttribute("unusable", List.copyOf(this.packs.unusable().values()));
		model.addAttribute("operator", this.viewers.current().operator());
		if (!model.containsAttribute("problems")) {
			model.addAttribute("problems", List.of());
		}
	}

	@GetMapping("/workshop/{pack}")
	String pack(@PathVariable String pack, @RequestParam(defaultValue = "0") int page,
			@RequestParam(required = false) @Nullable Integer published, Model model) {
		RulePack inUse = require(pack);
		List<PackVersion> versions = this.history.versions(pack, Given.page(page), SIZE + 1);
		model.addAttribute("section", "rules");
		model.addAttribute("pack", pack);
		model.addAttribute("heading", inUse.title());
		model.addAttribute("version", inUse.version());
		model.addAttribute("published", published);
		model.addAttribute("fileWords", fileWords(pack, inUse.version()));
		model.addAttribute("rules", inUse.rules()
			.stream()
			.map((rule) -> new PackLine(rule.id(), rule.title(), "last changed in version " + inUse.versionOf(rule)))
			.toList());
		model.addAttribute("versions",
				versions.stream()
					.limit(SIZE)
					.map((one) -> new VersionLine(one.version(), words(one), one.changed().size()))
					.toList());
		model.addAttribute("page", page);
		model.addAttribute("hasNext", versions.size() > SIZE);
		return "care/workshop-pack";
	}

	private RulePack require(String pack) {
		return this.packs.latest()
			.all()
			.stream()
			.filter((one) -> one.id().equals(pack))
			.findFirst()
			.orElseThrow(() -> new NotThere("There is no rule pack " + pack));
	}

	private @Nullable String fileWords(String pack, int version) {
		return this.packs.versionOfFile(pack)
			.filter((file) -> file < version)
			.map((file) -> ("The file of this server has version %d; version %d, published here, goes before it. "
					+ "A file with a higher version would go before both.")
				.formatted(file, version))
			.orElse(null);
	}

	@GetMapping("/workshop/{pack}/versions/{version}")
	String version(@PathVariable String pack, @PathVariable int version, Model model) {
		fill(pack, version, "", null, model);
		return "care/workshop-version";
	}

	private void fill(String pack, int version, String note, @Nullable String problem, Model model) {
		PackVersion one = this.history.require(pack, version);
		int newest = this.history.newest(pack).map(PackVersion::version).orElse(version);
		model.addAttribute("section", "rules");
		model.addAttribute("pack", pack);
		model.addAttribute("version", version);
		model.addAttribute("words", words(one));
		model.addAttribute("changed", one.changed());
		model.addAttribute("lines", this.history.changes(one));
		model.addAttribute("newest", newest);
		model.addAttribute("note", note);
		model.addAttribute("problem", problem);
	}

	@PostMapping("/workshop/{pack}/versions/{version}/back")
	String back(@PathVariable String pack, @PathVariable int version, @RequestParam int base,
			@RequestParam(defaultValue = "") String note, Model model, HttpServletResponse response) {
		String problem;
		try {
			PackVersion published = this.workshop.goBack(pack, base, version, note, author(this.viewers));
			return "redirect:/workshop/%s?published=%d".formatted(pack, published.version());
		}
		catch (BadInput ex) {
			problem = ex.what() + ": " + ex.mend() + ".";
			response.setStatus(HttpStatus.BAD_REQUEST.value());
		}
		catch (PublishConflict ex) {
			problem = ex.getMessage() + ". Nothing was published; look at it, then go back if you still want to.";
			response.setStatus(HttpStatus.CONFLICT.value());
		}
		catch (BrokenKnowledge ex) {
			problem = "This version no longer fits the other packs. " + ex.getMessage();
			response.setStatus(HttpStatus.BAD_REQUEST.value());
		}
		fill(pack, version, note, problem, model);
		return "care/workshop-version";
	}

	@GetMapping("/workshop/{pack}/versions/{version}/file")
	ResponseEntity<byte[]> file(@PathVariable String pack, @PathVariable int version) {
		return download(this.history.require(pack, version));
	}

	/** RFC 9512 names the media type. */
	static ResponseEntity<byte[]> download(PackVersion version) {
		return ResponseEntity.ok()
			.contentType(MediaType.parseMediaType("application/yaml"))
			.header(HttpHeaders.CONTENT_DISPOSITION,
					"attachment; filename=\"%s-%d.yaml\"".formatted(version.pack(), version.version()))
			.body(version.content().getBytes(StandardCharsets.UTF_8));
	}

}
