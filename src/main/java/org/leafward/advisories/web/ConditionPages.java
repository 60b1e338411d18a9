package org.leafward.advisories.web;

import jakarta.servlet.http.HttpServletResponse;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.AuditLog;
import org.leafward.accounts.Deed;
import org.leafward.advisories.ThresholdChange;
import org.leafward.advisories.Thresholds;
import org.leafward.advisories.conditions.Conditions;
import org.leafward.advisories.core.watch.Threshold;
import org.leafward.advisories.core.watch.WatchCondition;
import org.leafward.advisories.core.watch.WatchCondition.Moved;
import org.leafward.measure.BadInput;
import org.leafward.measure.DayWords;
import org.leafward.measure.Given;
import org.leafward.measure.NotThere;
import org.leafward.pages.Choice;
import org.leafward.regions.County;
import org.leafward.regions.Regions;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** What the watch looks out for, and its limits by county; for specialists. */
@Controller
class ConditionPages {

	private static final int MOST_CHANGES = 50;

	private final Conditions conditions;

	private final Thresholds thresholds;

	private final Regions regions;

	private final Deciding deciding;

	private final AuditLog audit;

	ConditionPages(Conditions conditions, Thresholds thresholds, Regions regions, Deciding deciding, AuditLog audit) {
		this.conditions = conditions;
		this.thresholds = thresholds;
		this.regions = regions;
		this.deciding = deciding;
		this.audit = audit;
	}

	/**
	 * A condition in the list.
	 *
	 * @param code its name
	 * @param title its title
	 * @param why what it is for
	 */
	record Line(String code, String title, String why) {
	}

	/**
	 * A limit.
	 *
	 * @param label what it limits
	 * @param usual the usual value
	 * @param bounds between which it can be set
	 * @param source where it comes from
	 * @param others where it is another one
	 */
	record LimitLine(String label, String usual, String bounds, String source, List<String> others) {
	}

	@GetMapping("/advisories/conditions")
	String list(Model model) {
		model.addAttribute("section", "advisories");
		model.addAttribute("conditions",
				this.conditions.all()
					.stream()
					.map((one) -> new Line(one.code(), one.condition().title().english(), one.why()))
					.toList());
		return "advisories/conditions";
	}

	@GetMapping("/advisories/conditions/{code}")
	String one(@PathVariable String code, Model model) {
		show(require(code), Map.of(), Map.of(), model);
		return "advisories/condition";
	}

	private WatchCondition require(String code) {
		return this.conditions.find(code)
			.orElseThrow(() -> new NotThere("There is no condition '%s'.".formatted(code)));
	}

	private void show(WatchCondition condition, Map<String, String> form, Map<String, String> errors, Model model) {
		List<Moved> moved = new ArrayList<>(this.thresholds.set(condition.code()));
		condition.moved()
			.stream()
			.filter((one) -> moved.stream()
				.noneMatch((set) -> set.threshold().equals(one.threshold()) && set.scope().equals(one.scope())))
			.forEach(moved::add);
		model.addAttribute("section", "advisories");
		model.addAttribute("code", condition.code());
		model.addAttribute("heading", condition.condition().title().english());
		model.addAttribute("lead", condition.why());
		model.addAttribute("limits", condition.thresholds().stream().map((one) -> line(one, moved)).toList());
		model.addAttribute("sources", condition.sources());
		model.addAttribute("changes",
				this.thresholds.history(condition.code(), MOST_CHANGES)
					.stream()
					.map((one) -> words(condition, one))
					.toList());
		model.addAttribute("thresholds",
				condition.thresholds()
					.stream()
					.filter((one) -> one.lowest() < one.highest())
					.map((one) -> new Choice(one.name(),
							(one.label().english() + " (" + one.unit().words() + ")").replace(" ()", "")))
					.toList());
		model.addAttribute("scopes", scopes());
		model.addAttribute("form", form);
		model.addAttribute("errors", errors);
	}

	private LimitLine line(Threshold one, List<Moved> moved) {
		Map<String, String> names = this.regions.counties()
			.stream()
			.collect(Collectors.toMap(County::code, County::name));
		return new LimitLine(one.label().english(), one.words(one.value()),
				(one.lowest() < one.highest())
						? "%s to %s".formatted(one.words(one.lowest()), one.words(one.highest())) : "stays as it is",
				one.source(),
				moved.stream()
					.filter((other) -> other.threshold().equals(one.name()))
					.map((other) -> "%s: %s".formatted(names.getOrDefault(other.scope(), other.scope()),
							one.words(other.value())))
					.sorted()
					.toList());
	}

	private String words(WatchCondition condition, ThresholdChange change) {
		Optional<Threshold> threshold = condition.thresholds()
			.stream()
			.filter((one) -> one.name().equals(change.threshold()))
			.findFirst();
		Double value = change.value();
		String scope = this.regions.find(change.scope()).map(County::name).orElse(change.scope());
		return "%s, %s: %s for %s %s%s".formatted(DayWords.of(LocalDate.ofInstant(change.at(), ZoneOffset.UTC)),
				change.by(), threshold.map((one) -> one.label().english()).orElse(change.threshold()), scope,
				(value == null) ? "is the usual one again"
						: "is " + threshold.map((one) -> one.words(value)).orElse(String.valueOf(value)),
				change.note().isEmpty() ? "." : ". " + change.note());
	}

	/** Counties and regions that whoever is looking may set limits for. */
	private List<Choice> scopes() {
		List<Choice> scopes = new ArrayList<>();
		List<County> counties = this.regions.counties();
		counties.stream()
			.filter((one) -> this.deciding.serves(one.name()))
			.map((one) -> new Choice(one.code(), one.name()))
			.forEach(scopes::add);
		new TreeSet<>(counties.stream().map(County::region).toList()).stream()
			.filter((region) -> this.deciding.servesRegion(region, counties))
			.map((region) -> new Choice(region, "All counties of " + region))
			.forEach(scopes::add);
		return scopes;
	}

	@PostMapping("/advisories/conditions/{code}/thresholds")
	String put(@PathVariable String code, @RequestParam(defaultValue = "") String threshold,
			@RequestParam(defaultValue = "") String scope, @RequestParam(defaultValue = "") String value,
			@RequestParam(defaultValue = "") String note, Model model, HttpServletResponse response) {
		WatchCondition condition = require(code);
		try {
			if (condition.thresholds().stream().noneMatch((one) -> one.name().equals(threshold))) {
				throw new BadInput("no limit is chosen", "threshold", "choose one from the list");
			}
			if (scopes().stream().noneMatch((one) -> one.value().equals(scope))) {
				throw new BadInput("no county of yours is chosen", "scope", "choose one from the list");
			}
			Double number = value.isBlank() ? null
					: Given.number("value", value, condition.threshold(threshold).unit().words());
			this.thresholds.put(code, threshold, scope, number, note, this.deciding.decider());
			this.audit.note(Deed.MOVED_WATCH_LIMIT, null, words(condition, threshold, scope, number));
		}
		catch (BadInput ex) {
			response.setStatus(HttpStatus.BAD_REQUEST.value());
			show(condition, Map.of("threshold", threshold, "scope", scope, "value", value, "note", note), ex.byField(),
					model);
			return "advisories/condition";
		}
		return "redirect:/advisories/conditions/" + code;
	}

	private static String words(WatchCondition condition, String threshold, String scope, @Nullable Double number) {
		return "%s, %s, %s: %s".formatted(condition.code(), threshold, scope,
				(number != null) ? condition.threshold(threshold).words(number) : "usual");
	}

}
