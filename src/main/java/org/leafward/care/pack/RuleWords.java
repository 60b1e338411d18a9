package org.leafward.care.pack;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.leafward.care.RulePacks;
import org.leafward.care.core.rule.Ramp;
import org.leafward.care.core.rule.Rule;
import org.leafward.care.core.rule.RulePack;
import org.leafward.care.pack.RuleWordsFile.Step;
import org.leafward.care.pack.RuleWordsFile.Words;
import org.leafward.knowledge.BrokenKnowledge;
import org.leafward.knowledge.KnowledgeFile;
import org.leafward.knowledge.KnowledgeFiles;
import org.leafward.knowledge.KnowledgeReader;
import org.leafward.knowledge.Problem;
import org.leafward.knowledge.Reading;
import org.leafward.language.Language;
import org.leafward.language.PhraseSource;
import org.springframework.stereotype.Component;

/**
 * The words of rules in other languages than English. A rule that changed after the
 * version that was translated stays English: old words for a new rule could hurt.
 */
@Component
class RuleWords implements PhraseSource {

	private static final String SCHEMA = "schema/rule-words-1.json";

	private final RulePacks packs;

	private final Map<Language, Map<String, RuleWordsFile>> files = new EnumMap<>(Language.class);

	RuleWords(KnowledgeFiles files, KnowledgeReader reader, RulePacks packs) {
		this.packs = packs;
		List<Problem> problems = new ArrayList<>();
		for (Language language : Language.values()) {
			if (language != Language.ENGLISH) {
				this.files.put(language, read(files.of("messages/" + language.code() + "/rules"), reader, problems));
			}
		}
		if (!problems.isEmpty()) {
			throw new BrokenKnowledge(problems);
		}
	}

	private static Map<String, RuleWordsFile> read(List<KnowledgeFile> files, KnowledgeReader reader,
			List<Problem> problems) {
		Map<String, RuleWordsFile> byPack = new HashMap<>();
		for (KnowledgeFile file : files) {
			Reading<RuleWordsFile> reading = reader.read(file, SCHEMA, RuleWordsFile.class);
			problems.addAll(reading.problems());
			RuleWordsFile content = reading.value();
			if (content != null && byPack.putIfAbsent(content.pack(), content) != null) {
				problems.add(reading.places()
					.problem("/pack", "the pack '%s' has two files".formatted(content.pack()), "put both into one"));
			}
		}
		return byPack;
	}

	@Override
	public Map<String, String> texts(Language language) {
		Map<String, String> texts = new HashMap<>();
		for (RulePack pack : this.packs.all()) {
			RuleWordsFile file = this.files.getOrDefault(language, Map.of()).get(pack.id());
			if (file == null) {
				continue;
			}
			texts.put(pack.title(), file.title());
			for (Rule rule : pack.rules()) {
				Words words = file.rules().get(rule.id());
				if (words != null && pack.versionOf(rule) <= file.ofVersion()) {
					put(texts, rule, words);
				}
			}
		}
		return texts;
	}

	private static void put(Map<String, String> texts, Rule rule, Words words) {
		put(texts, rule.text().title(), words.title());
		put(texts, rule.text().what(), words.what());
		put(texts, rule.text().amount(), words.amount());
		put(texts, rule.text().why(), words.why());
		put(texts, rule.text().otherwise(), words.otherwise());
		put(texts, rule.text().caution(), words.caution());
		Map<String, String> amounts = Optional.ofNullable(words.amountBySpecies()).orElse(Map.of());
		rule.amounts().forEach((species, amount) -> put(texts, amount, amounts.get(species.value())));
		List<Step> steps = Optional.ofNullable(words.steps()).orElse(List.of());
		if (rule.timing() instanceof Ramp ramp && ramp.steps().size() == steps.size()) {
			for (int i = 0; i < steps.size(); i++) {
				put(texts, ramp.steps().get(i).place(), steps.get(i).place());
				put(texts, ramp.steps().get(i).text(), steps.get(i).text());
			}
		}
	}

	private static void put(Map<String, String> texts, @Nullable String english, @Nullable String other) {
		if (english != null && other != null) {
			texts.put(english, other);
		}
	}

	@Override
	public Object version() {
		return this.packs.fingerprint();
	}

}
