package org.leafward.advisories.conditions;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.leafward.advisories.AlertDefaults;
import org.leafward.advisories.Bilingual;
import org.leafward.advisories.Condition;
import org.leafward.advisories.PlantChoice;
import org.leafward.advisories.core.watch.Criterion;
import org.leafward.advisories.core.watch.FigureKind;
import org.leafward.advisories.core.watch.OneDay;
import org.leafward.advisories.core.watch.SeasonEnd;
import org.leafward.advisories.core.watch.Threshold;
import org.leafward.advisories.core.watch.ThresholdUnit;
import org.leafward.advisories.core.watch.WatchCondition;
import org.leafward.advisories.core.watch.WatchCondition.Moved;
import org.leafward.advisories.core.watch.WatchCondition.TextTemplate;
import org.leafward.knowledge.BrokenKnowledge;
import org.leafward.knowledge.KnowledgeFile;
import org.leafward.knowledge.KnowledgeReader;
import org.leafward.knowledge.Problem;
import org.leafward.knowledge.Reading;
import org.leafward.plants.Catalogue;
import org.leafward.plants.SpeciesId;

/** Reads the conditions of the watch and checks them against the catalogue. */
final class ConditionReader {

	static final String SCHEMA = "schema/advisories-1.json";

	private static final Pattern PLACE = Pattern.compile("\\{([a-z-]+)}");

	/** Places of a text that every condition fills. */
	private static final Set<String> ALWAYS = Set.of("where", "when", "crops");

	private final KnowledgeReader reader;

	private final Catalogue catalogue;

	/**
	 * Creates a reader.
	 * @param reader reads files of knowledge
	 * @param catalogue the plants that may be named
	 */
	ConditionReader(KnowledgeReader reader, Catalogue catalogue) {
		this.reader = reader;
		this.catalogue = catalogue;
	}

	/**
	 * Reads all files.
	 * @param files the files
	 * @return the conditions in their order
	 * @throws BrokenKnowledge with every problem of every file
	 */
	List<WatchCondition> read(Collection<KnowledgeFile> files) {
		List<Problem> problems = new ArrayList<>();
		List<WatchCondition> conditions = new ArrayList<>();
		Set<String> codes = new HashSet<>();
		for (KnowledgeFile file : files) {
			Reading<ConditionDraft> reading = this.reader.read(file, SCHEMA, ConditionDraft.class);
			problems.addAll(reading.problems());
			ConditionDraft draft = reading.value();
			if (draft == null) {
				continue;
			}
			Complaints complaints = new Complaints(reading.places());
			for (int i = 0; i < draft.conditions().size(); i++) {
				ConditionDraft.Entry entry = draft.conditions().get(i);
				if (!codes.add(entry.condition())) {
					complaints.add("/conditions/%d/condition".formatted(i),
							"there already is a condition '%s'".formatted(entry.condition()),
							"give this one a name of its own");
				}
				WatchCondition condition = condition(entry, "/conditions/" + i, complaints);
				if (condition != null) {
					conditions.add(condition);
				}
			}
			problems.addAll(complaints.problems());
		}
		if (!problems.isEmpty()) {
			throw new BrokenKnowledge(problems);
		}
		return conditions;
	}

	private @Nullable WatchCondition condition(ConditionDraft.Entry entry, String path, Complaints complaints) {
		int before = complaints.problems().size();
		List<Moved> moved = new ArrayList<>();
		Map<String, Threshold> thresholds = thresholds(entry, path + "/thresholds", moved, complaints);
		Set<String> used = new HashSet<>(Set.of(WatchCondition.COOL_DOWN));
		CriterionReader criteria = new CriterionReader(thresholds, used, entry.stages() != null, complaints);
		List<Criterion> all = (entry.when() != null) ? criteria.all(entry.when(), false, path + "/when") : List.of();
		OneDay oneDay = oneDay(entry.onOneDay(), criteria, path + "/on-one-day", complaints);
		if (entry.when() == null && entry.onOneDay() == null) {
			complaints.add(path, "nothing has to hold", "add 'when', 'on-one-day' or both");
		}
		if ((entry.onOneDay() == null) != (entry.lasts() != null)) {
			complaints.add(path, "'lasts' belongs to conditions without 'on-one-day', and to no other",
					"add or remove it");
		}
		Set<String> spare = new HashSet<>(thresholds.keySet());
		spare.removeAll(used);
		spare.forEach((name) -> complaints.add(path + "/thresholds/" + name,
				"nothing asks for the threshold '%s'".formatted(name), "name it in a check, or remove it"));
		PlantChoice concerns = concerns(entry.concerns(), path + "/concerns", complaints);
		Map<String, TextTemplate> texts = texts(entry, all, oneDay, path + "/text", complaints);
		WatchCondition.WatchSeason season = season(entry.season(), criteria, path + "/season");
		StagesReader stages = new StagesReader(criteria, this.catalogue, complaints);
		ConditionDraft.Alert alert = entry.alert();
		Condition face = new Condition(entry.condition(), words(entry.title()), new AlertDefaults(alert.category(),
				alert.urgency(), alert.severity(), alert.certainty(), Set.copyOf(alert.response())), concerns);
		WatchCondition made = new WatchCondition(face, entry.why(), List.copyOf(thresholds.values()), season, all,
				oneDay, (entry.lasts() != null) ? entry.lasts() : 1,
				(entry.stages() != null) ? stages.read(entry.stages(), path + "/stages") : null, texts, entry.sources(),
				moved);
		return (complaints.problems().size() == before) ? made : null;
	}

	static Bilingual words(ConditionDraft.Words words) {
		return new Bilingual(words.en(), words.es());
	}

	private static Map<String, Threshold> thresholds(ConditionDraft.Entry entry, String path, List<Moved> moved,
			Complaints complaints) {
		Map<String, Threshold> thresholds = new LinkedHashMap<>();
		entry.thresholds().forEach((name, limit) -> {
			String at = path + "/" + name;
			Threshold threshold = complaints.tried(at + "/value", () -> new Threshold(name, words(limit.label()),
					limit.value(), ThresholdUnit.of(limit.unit()), limit.lowest(), limit.highest(), limit.source()));
			if (threshold != null) {
				thresholds.put(name, threshold);
				moved(threshold, limit.regions(), at + "/regions", moved, complaints);
				moved(threshold, limit.counties(), at + "/counties", moved, complaints);
			}
		});
		Threshold coolDown = thresholds.get(WatchCondition.COOL_DOWN);
		if (coolDown == null || coolDown.unit() != ThresholdUnit.DAYS || coolDown.lowest() < 1) {
			complaints.add(path, "there is no threshold 'cool-down' of at least a day",
					"add it: for so many days nothing is proposed again");
		}
		return thresholds;
	}

	private static void moved(Threshold threshold, @Nullable Map<String, Double> values, String path, List<Moved> moved,
			Complaints complaints) {
		if (values != null) {
			values.forEach((scope, value) -> {
				Double checked = complaints.tried(path + "/" + scope, () -> threshold.checked(value));
				if (checked != null) {
					moved.add(new Moved(threshold.name(), scope, checked));
				}
			});
		}
	}

	private static @Nullable OneDay oneDay(ConditionDraft.@Nullable DayDraft draft, CriterionReader criteria,
			String path, Complaints complaints) {
		if (draft == null) {
			return null;
		}
		if (draft.to() < draft.from()) {
			complaints.add(path + "/to", "the last day comes before the first", "let it be at least 'from'");
		}
		return new OneDay(draft.from(), draft.to(), criteria.all(draft.all(), true, path + "/all"),
				Boolean.TRUE.equals(draft.night()));
	}

	private static WatchCondition.@Nullable WatchSeason season(ConditionDraft.@Nullable SeasonDraft draft,
			CriterionReader criteria, String path) {
		if (draft == null) {
			return null;
		}
		SeasonEnd from = criteria.end(draft.from(), path + "/from");
		SeasonEnd to = criteria.end(draft.to(), path + "/to");
		return (from != null && to != null) ? new WatchCondition.WatchSeason(from, to) : null;
	}

	private PlantChoice concerns(ConditionDraft.@Nullable Concerns draft, String path, Complaints complaints) {
		if (draft == null) {
			return PlantChoice.EVERYTHING;
		}
		Set<String> groups = known(draft.groups(), this.catalogue.groups().keySet(), path + "/groups", "plant group",
				complaints);
		Set<String> traits = known(draft.traits(), this.catalogue.traits().keySet(), path + "/traits", "trait",
				complaints);
		Set<String> species = new HashSet<>();
		List<String> named = Objects.requireNonNullElse(draft.species(), List.of());
		for (int i = 0; i < named.size(); i++) {
			String one = named.get(i);
			if (this.catalogue.find(new SpeciesId(one)).isEmpty()) {
				complaints.add(path + "/species/" + i, "there is no species '%s'".formatted(one),
						"take an id of the catalogue");
			}
			species.add(one);
		}
		return new PlantChoice(groups, traits, species);
	}

	private static Set<String> known(@Nullable List<String> named, Set<String> all, String path, String what,
			Complaints complaints) {
		Set<String> known = new HashSet<>();
		List<String> written = Objects.requireNonNullElse(named, List.of());
		for (int i = 0; i < written.size(); i++) {
			if (!all.contains(written.get(i))) {
				complaints.add(path + "/" + i, "there is no %s '%s'".formatted(what, written.get(i)),
						"take one of groups-and-traits.yaml");
			}
			known.add(written.get(i));
		}
		return known;
	}

	private static Map<String, TextTemplate> texts(ConditionDraft.Entry entry, List<Criterion> all,
			@Nullable OneDay oneDay, String path, Complaints complaints) {
		Set<String> figures = new HashSet<>(ALWAYS);
		all.forEach((one) -> figures(one, figures));
		if (oneDay != null) {
			oneDay.all().forEach((one) -> figures(one, figures));
		}
		Map<String, ConditionDraft.Text> written = Map.of("en", entry.text().en(), "es", entry.text().es());
		Map<String, TextTemplate> texts = new LinkedHashMap<>();
		written.forEach((language, text) -> {
			String at = path + "/" + language;
			places(text.headline(), figures, at + "/headline", complaints);
			places(text.what(), figures, at + "/what", complaints);
			places(text.impacts(), figures, at + "/impacts", complaints);
			places(text.toDo(), figures, at + "/to-do", complaints);
			texts.put(language, new TextTemplate(text.headline(), text.what(), text.impacts(), text.toDo()));
		});
		return texts;
	}

	private static void figures(Criterion criterion, Set<String> figures) {
		if (criterion instanceof Criterion.AnyOf any) {
			any.of().forEach((one) -> figures(one, figures));
		}
		else if (criterion instanceof Criterion.Compare compare) {
			figures.add(compare.figure().kind().code());
			if (compare.figure().kind() == FigureKind.KILL_MARGIN) {
				figures.add(FigureKind.LOW.code());
			}
		}
	}

	private static void places(String text, Set<String> figures, String path, Complaints complaints) {
		Matcher matcher = PLACE.matcher(text);
		while (matcher.find()) {
			if (!figures.contains(matcher.group(1))) {
				complaints.add(path, "there is no figure for the place {%s}".formatted(matcher.group(1)),
						"write where, when, crops or a figure that the condition compares");
			}
		}
	}

}
