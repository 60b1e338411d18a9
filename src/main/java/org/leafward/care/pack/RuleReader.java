package org.leafward.care.pack;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskText;
import org.leafward.care.core.rule.Computes;
import org.leafward.care.core.rule.Concern;
import org.leafward.care.core.rule.Effort;
import org.leafward.care.core.rule.Hurt;
import org.leafward.care.core.rule.Rule;
import org.leafward.care.core.rule.Timing;
import org.leafward.care.core.rule.Variant;
import org.leafward.care.core.rule.Weather;
import org.leafward.care.core.rule.Work;
import org.leafward.care.pack.PackDraft.RuleDraft;
import org.leafward.care.pack.PackDraft.WordsDraft;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.plants.SpeciesId;

/** Turns rules as written into values, and finds what the schema can't see. */
final class RuleReader {

	private final KnownPlants known;

	private final KnownPhases phases;

	private final Complaints complaints;

	RuleReader(KnownPlants known, KnownPhases phases, Complaints complaints) {
		this.known = known;
		this.phases = phases;
		this.complaints = complaints;
	}

	@Nullable Rule read(RuleDraft draft, String path) {
		TaskKind kind = kind(draft.kind());
		Concern concern = new ConcernReader(this.known, this.complaints).read(draft.concerns(), path + "/concerns",
				draft.from() != null && draft.from().soilTest() != null);
		BySpecies bySpecies = new BySpecies(this.known, this.known.of(concern), this.complaints);
		AnchorReader anchors = new AnchorReader(this.complaints, this.phases, bySpecies);
		SourceReader sources = new SourceReader(this.complaints);
		Timing timing = new TimingReader(this.complaints, anchors, bySpecies).read(draft, kind, path);
		Weather weather = new WeatherReader(this.complaints).read(draft.weather(), path + "/weather");
		List<Variant> variants = new VariantReader(this.complaints, anchors, sources).read(draft, kind, path);
		WordsDraft words = draft.text();
		TaskText text = new TaskText(draft.title(), words.what(), words.amount(), words.why(), words.otherwise(),
				words.caution());
		Map<SpeciesId, String> amounts = bySpecies.read(words.amountBySpecies(), words.amount() == null,
				path + "/text/amount-by-species");
		Set<String> despite = despite(draft, kind, path);
		Effort effort = effort(draft, kind, path);
		Computes computes = computes(draft, kind, path);
		if (timing == null) {
			return null;
		}
		return new Rule(draft.id(), kind, work(draft.work()), concern, timing, variants, weather, despite, effort, text,
				amounts, sources.read(draft.sources(), path + "/sources"), computes, hurt(draft, bySpecies, path));
	}

	private static TaskKind kind(String code) {
		return switch (code) {
			case "do" -> TaskKind.DO;
			case "hold-off" -> TaskKind.HOLD_OFF;
			case "ramp" -> TaskKind.RAMP_DAY;
			default -> TaskKind.WATCH;
		};
	}

	private static Work work(String code) {
		return Work.valueOf(code.toUpperCase(Locale.ROOT).replace('-', '_'));
	}

	private static boolean asks(TaskKind kind) {
		return kind == TaskKind.DO || kind == TaskKind.RAMP_DAY;
	}

	private Set<String> despite(RuleDraft draft, TaskKind kind, String path) {
		if (draft.despite() == null) {
			return Set.of();
		}
		if (!asks(kind)) {
			this.complaints.add(path + "/despite", "only a do or a ramp goes before a hold-off", "remove it");
		}
		return new HashSet<>(draft.despite());
	}

	private @Nullable Computes computes(RuleDraft draft, TaskKind kind, String path) {
		if (draft.computes() == null) {
			return null;
		}
		if (kind != TaskKind.DO) {
			this.complaints.add(path + "/computes", "only a do has an amount to work out", "remove it");
		}
		return Computes.valueOf(draft.computes().toUpperCase(Locale.ROOT).replace('-', '_'));
	}

	private Hurt hurt(RuleDraft draft, BySpecies bySpecies, String path) {
		if ("cover".equals(draft.computes()) && draft.hurtAt() == null && draft.hurtAtBySpecies() == null) {
			this.complaints.add(path + "/computes", "a cover goes by the temperature that hurts",
					"add 'hurt-at', for example hurt-at: 31F, or 'hurt-at-by-species'");
		}
		Map<SpeciesId, TemperatureThreshold> read = new HashMap<>();
		bySpecies.read(draft.hurtAtBySpecies(), draft.hurtAt() == null, path + "/hurt-at-by-species")
			.forEach((species, degrees) -> read.put(species, TemperatureThreshold.parse(degrees)));
		return new Hurt((draft.hurtAt() != null) ? TemperatureThreshold.parse(draft.hurtAt()) : null, read);
	}

	private Effort effort(RuleDraft draft, TaskKind kind, String path) {
		Set<String> skills = Set.copyOf(Objects.requireNonNullElse(draft.skills(), List.of()));
		List<String> tools = Objects.requireNonNullElse(draft.tools(), List.of());
		if (draft.effort() == null) {
			if (asks(kind)) {
				this.complaints.add(path, "the rule doesn't say how much work it is",
						"add 'effort', for example effort: {minutes: 20, per: planting}");
			}
			return new Effort(0, Effort.Per.PLANTING, skills, tools);
		}
		if (kind == TaskKind.HOLD_OFF) {
			this.complaints.add(path + "/effort", "holding off is no work", "remove it");
		}
		return new Effort(draft.effort().minutes(), Effort.Per.valueOf(draft.effort().per().toUpperCase(Locale.ROOT)),
				skills, tools);
	}

}
