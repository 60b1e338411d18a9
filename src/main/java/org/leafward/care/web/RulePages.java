package org.leafward.care.web;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.leafward.care.TaskLines;
import org.leafward.care.RulePacks;
import org.leafward.care.core.check.Contradiction;
import org.leafward.care.core.check.RuleSeasons;
import org.leafward.care.core.diff.LineDiff;
import org.leafward.care.core.rule.Grade;
import org.leafward.care.core.rule.Rule;
import org.leafward.care.core.rule.Work;
import org.leafward.care.workshop.PackHistory;
import org.leafward.care.workshop.RuleChange;
import org.leafward.measure.DayWords;
import org.leafward.measure.Given;
import org.leafward.measure.NotThere;
import org.leafward.pages.Choice;
import org.leafward.pages.Formats;
import org.leafward.pages.Mark;
import org.leafward.pages.Viewers;
import org.leafward.plants.Catalogue;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.util.UriComponentsBuilder;

/** The rules for readers: all of them by what they are about, and each in full. */
@Controller
class RulePages {

	private static final int SIZE = 20;

	private static final Formats FORMATS = new Formats(0);

	private final RulePacks packs;

	private final RuleList rules;

	private final PackHistory history;

	private final Catalogue catalogue;

	private final Viewers viewers;

	RulePages(RulePacks packs, RuleList rules, PackHistory history, Catalogue catalogue, Viewers viewers) {
		this.packs = packs;
		this.rules = rules;
		this.history = history;
		this.catalogue = catalogue;
		this.viewers = viewers;
	}

	/**
	 * A rule in the list.
	 *
	 * @param reference {@code pack/rule}
	 * @param mark how it is drawn
	 * @param title what to do or leave
	 * @param work the kind of work
	 * @param whom whom it is for
	 * @param when its days in words
	 * @param about its days on the reference climate; null when it has none there
	 * @param sources its sources by title
	 * @param trust how far to trust it
	 */
	record Listed(String reference, Mark mark, String title, String work, String whom, String when,
			@Nullable String about, String sources, String trust) {
	}

	/**
	 * A source of a rule.
	 *
	 * @param title title
	 * @param publisher who published it
	 * @param address web address
	 * @param trust how far to trust it
	 */
	record SourceLine(String title, @Nullable String publisher, @Nullable String address, String trust) {
	}

	/**
	 * A pair of rules that want and forbid the same work.
	 *
	 * @param other the other rule
	 * @param words which goes before
	 */
	record Clash(String other, String words) {
	}

	/**
	 * A version in which a rule changed.
	 *
	 * @param version its number
	 * @param words when, by whom and why
	 * @param lines what changed
	 */
	record Changed(int version, String words, List<LineDiff.Line> lines) {
	}

	@GetMapping("/rules")
	String list(RuleList.Filter filter, @RequestParam(defaultValue = "0") int page, Model model) {
		List<RuleList.Named> found = this.rules.find(filter);
		RulePacks now = this.packs.latest();
		WhomWords whom = new WhomWords(this.catalogue);
		long from = (long) Given.page(page) * SIZE;
		model.addAttribute("section", "rules");
		model.addAttribute("filter", filter);
		model.addAttribute("count", found.size());
		model.addAttribute("all", now.all().stream().mapToInt((pack) -> pack.rules().size()).sum());
		model.addAttribute("rules",
				found.stream().skip(from).limit(SIZE).map((one) -> listed(now, one, whom)).toList());
		model.addAttribute("page", page);
		model.addAttribute("hasNext", found.size() > from + SIZE);
		model.addAttribute("here", here(filter));
		model.addAttribute("place", RuleSeasons.PLACE);
		model.addAttribute("mayChange", this.viewers.current().specialist());
		model.addAttribute("seasons",
				choices("any season",
						Arrays.stream(RuleSeasons.Quarter.values())
							.map((one) -> one.name().toLowerCase(Locale.ROOT))
							.map((one) -> new Choice(one, one))));
		model.addAttribute("groups",
				choices("any plants",
						this.rules.groups()
							.stream()
							.map((one) -> new Choice(one, this.catalogue.groups().getOrDefault(one, one)))));
		model.addAttribute("works",
				choices("any work", Arrays.stream(Work.values()).map((one) -> new Choice(one.code(), one.words()))));
		model.addAttribute("grades",
				choices("any source", Arrays.stream(Grade.values()).map((one) -> new Choice(one.code(), one.words()))));
		return "care/rules";
	}

	private static List<Choice> choices(String any, Stream<Choice> some) {
		return Stream.concat(Stream.of(new Choice("", any)), some).toList();
	}

	private static String here(RuleList.Filter filter) {
		UriComponentsBuilder address = UriComponentsBuilder.fromPath("/rules");
		add(address, "q", filter.q());
		add(address, "season", filter.season());
		add(address, "group", filter.group());
		add(address, "work", filter.work());
		add(address, "grade", filter.grade());
		return address.encode().toUriString();
	}

	private static void add(UriComponentsBuilder address, String name, @Nullable String value) {
		if (value != null && !value.isBlank()) {
			address.queryParam(name, "{" + name + "}").uriVariables(Map.of(name, value));
		}
	}

	private Listed listed(RulePacks now, RuleList.Named one, WhomWords whom) {
		Rule rule = one.rule();
		String about = this.rules.window(now, one.pack(), rule)
			.map((days) -> FORMATS.dayOfYear(days.from()) + " – " + FORMATS.dayOfYear(days.to()))
			.orElse(null);
		return new Listed(one.reference(), TaskLines.mark(rule.kind()), rule.title(), rule.work().words(),
				whom.of(rule.concern()), RuleWords.when(rule.timing()), about,
				String.join("; ", rule.sources().stream().map((source) -> source.title()).toList()),
				RuleWords.trust(rule.sources()));
	}

	@GetMapping("/rules/{pack}/{rule}")
	String rule(@PathVariable String pack, @PathVariable String rule, Model model) {
		RulePacks now = this.packs.latest();
		RuleList.Named found = this.rules.find(now, pack, rule)
			.orElseThrow(() -> new NotThere("There is no rule %s/%s".formatted(pack, rule)));
		Rule one = found.rule();
		RuleFacts facts = new RuleFacts(new WhomWords(this.catalogue), FORMATS);
		model.addAttribute("section", "rules");
		model.addAttribute("pack", found.pack().id());
		model.addAttribute("packTitle", found.pack().title());
		model.addAttribute("region", found.pack().region());
		model.addAttribute("version", found.pack().versionOf(one));
		model.addAttribute("rule", one.id());
		model.addAttribute("mark", TaskLines.mark(one.kind()));
		model.addAttribute("heading", one.title());
		model.addAttribute("work", one.work().words());
		model.addAttribute("what", one.text().what());
		model.addAttribute("caution", one.text().caution());
		model.addAttribute("facts", facts.of(one, this.rules.window(now, found.pack(), one)));
		model.addAttribute("regions", facts.regions(one));
		model.addAttribute("bySpecies", facts.bySpecies(one));
		model.addAttribute("sources",
				one.sources()
					.stream()
					.map((source) -> new SourceLine(source.title(), source.publisher(), web(source.address()),
							RuleWords.trust(source.grade())))
					.toList());
		model.addAttribute("clashes", clashes(now, found.reference()));
		model.addAttribute("history", this.history.of(pack, rule).stream().map(RulePages::changed).toList());
		model.addAttribute("mayChange", this.viewers.current().specialist());
		return "care/rule";
	}

	private static @Nullable String web(@Nullable String address) {
		return (address != null && address.matches("https?://\\S+")) ? address : null;
	}

	private static List<Clash> clashes(RulePacks now, String reference) {
		return now.contradictions()
			.stream()
			.filter((one) -> one.task().equals(reference) || one.holdOff().equals(reference))
			.map((one) -> clash(one, reference))
			.toList();
	}

	private static Clash clash(Contradiction one, String reference) {
		boolean task = one.task().equals(reference);
		String first = (one.settled() == task) ? "This rule goes before it" : "It goes before this rule";
		String left = one.settled() ? "" : (one.left() > 0)
				? "; %d days of the task are left there".formatted(one.left()) : "; nothing of the task is left there";
		return new Clash(task ? one.holdOff() : one.task(),
				"%s. They share %d days (%s, %s)%s.".formatted(first, one.shared(),
						(one.example() != null) ? one.example().value().replace('-', ' ') : "the site", one.place(),
						left));
	}

	private static Changed changed(RuleChange change) {
		return new Changed(change.version().version(),
				"%s, %s: %s".formatted(DayWords.of(LocalDate.ofInstant(change.version().at(), ZoneOffset.UTC)),
						change.version().by(), change.version().note()),
				change.lines());
	}

}
