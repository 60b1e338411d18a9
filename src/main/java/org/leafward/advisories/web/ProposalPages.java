package org.leafward.advisories.web;

import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.advisories.AffectedCounty;
import org.leafward.advisories.Proposal;
import org.leafward.advisories.ProposalId;
import org.leafward.advisories.ProposalPage;
import org.leafward.advisories.Proposals;
import org.leafward.measure.BadInput;
import org.leafward.measure.NotThere;
import org.leafward.plants.Catalogue;
import org.leafward.regions.Regions;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** What the watch found, for the specialists of the counties. */
@Controller
class ProposalPages {

	/** Wide enough for names, narrow enough for a phone turned upright. */
	private static final int MAP = 340;

	/** Groups that are shown; the rest is small. */
	private static final int MOST_GROUPS = 12;

	private final Proposals proposals;

	private final Deciding deciding;

	private final Regions regions;

	private final Catalogue catalogue;

	private final Clock clock;

	ProposalPages(Proposals proposals, Deciding deciding, Regions regions, Catalogue catalogue, Clock clock) {
		this.proposals = proposals;
		this.deciding = deciding;
		this.regions = regions;
		this.catalogue = catalogue;
		this.clock = clock;
	}

	@GetMapping("/advisories/proposals")
	String list(@RequestParam(defaultValue = "0") int page, @RequestParam(defaultValue = "false") boolean all,
			Model model) {
		ProposalPage found = this.proposals.page(this.deciding.counties(), !all, page);
		ProposalWords words = words();
		model.addAttribute("section", "advisories");
		model.addAttribute("lead", lead(found.total(), all));
		model.addAttribute("proposals", found.proposals().stream().map(words::line).toList());
		model.addAttribute("all", all);
		model.addAttribute("page", page);
		model.addAttribute("hasNext", found.more());
		model.addAttribute("here", all ? "/advisories/proposals?all=true" : "/advisories/proposals");
		return "advisories/proposals";
	}

	private String lead(long total, boolean all) {
		String found = all ? (total == 1) ? "One proposal is kept" : "%d proposals are kept".formatted(total)
				: (total == 0) ? "Nothing waits for a decision" : (total == 1) ? "One proposal waits for a decision"
						: "%d proposals wait for a decision".formatted(total);
		return "%s for %s.".formatted(found, this.deciding.words());
	}

	private ProposalWords words() {
		return new ProposalWords(LocalDate.ofInstant(this.clock.instant(), ZoneOffset.UTC));
	}

	@GetMapping("/advisories/proposals/{id}")
	String one(@PathVariable UUID id, Model model) {
		show(require(id), model);
		return "advisories/proposal";
	}

	private Proposal require(UUID id) {
		return this.proposals.find(new ProposalId(id))
			.filter(this.deciding::mayOpen)
			.orElseThrow(() -> new NotThere("There is no such proposal for your counties."));
	}

	private void show(Proposal proposal, Model model) {
		ProposalWords words = words();
		List<AffectedCounty> open = this.deciding.open(proposal);
		Set<String> codes = proposal.counties().stream().map(AffectedCounty::code).collect(Collectors.toSet());
		model.addAttribute("section", "advisories");
		model.addAttribute("id", proposal.id().value());
		model.addAttribute("heading", proposal.condition().title().english());
		model.addAttribute("lead", proposal.english().headline() + ".");
		model.addAttribute("days", words.days(proposal.from(), proposal.to()));
		model.addAttribute("grows", words.grows(proposal.growth()));
		model.addAttribute("counties", words.counties(proposal, this.proposals.decided(proposal.id())));
		model.addAttribute("groups",
				words.groups(proposal.growth(), this.catalogue.groups()).stream().limit(MOST_GROUPS).toList());
		model.addAttribute("map", this.regions.map(MAP).map((map) -> map.dotting(codes).svg()).orElse(null));
		model.addAttribute("english", proposal.english());
		model.addAttribute("spanish", proposal.spanish());
		model.addAttribute("open", open);
		model.addAttribute("made", words.days(LocalDate.ofInstant(proposal.madeAt(), proposal.counties().get(0).zone()),
				LocalDate.ofInstant(proposal.madeAt(), proposal.counties().get(0).zone())));
		if (!model.containsAttribute("errors")) {
			model.addAttribute("errors", Map.of());
			model.addAttribute("why", "");
		}
	}

	@PostMapping("/advisories/proposals/{id}/dismiss")
	String dismiss(@PathVariable UUID id, @RequestParam(required = false) @Nullable Set<String> county,
			@RequestParam(defaultValue = "") String why, Model model, HttpServletResponse response) {
		Proposal proposal = require(id);
		Set<String> theirs = new HashSet<>(Objects.requireNonNullElse(county, Set.of()));
		theirs.retainAll(this.deciding.open(proposal).stream().map(AffectedCounty::code).toList());
		try {
			if (theirs.isEmpty()) {
				throw new BadInput("no county is ticked that waits for your decision", "county", "tick one at least");
			}
			this.proposals.dismiss(proposal.id(), theirs, this.deciding.decider(), why);
		}
		catch (BadInput ex) {
			response.setStatus(HttpStatus.BAD_REQUEST.value());
			model.addAttribute("errors", ex.byField());
			model.addAttribute("why", why);
			show(proposal, model);
			return "advisories/proposal";
		}
		return "redirect:/advisories/proposals/" + id;
	}

}
