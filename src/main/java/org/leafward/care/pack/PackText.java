package org.leafward.care.pack;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.leafward.care.pack.PackDraft.RuleDraft;
import org.leafward.knowledge.KnowledgeFile;
import org.leafward.knowledge.KnowledgeReader;
import org.leafward.knowledge.Reading;

/** A pack as text: which lines a rule takes, and what differs between two versions. */
final class PackText {

	private static final Pattern VERSION = Pattern.compile("(?m)^version:[ \\t]*[0-9]+");

	private final List<String> lines;

	private final @Nullable PackDraft draft;

	private final Map<String, Block> blocks = new LinkedHashMap<>();

	private PackText(String content, Reading<PackDraft> reading) {
		this.lines = content.lines().toList();
		this.draft = reading.value();
		if (this.draft != null) {
			find(this.draft, reading);
		}
	}

	/**
	 * The lines of a rule.
	 *
	 * @param first its first line, from 1
	 * @param last its last line
	 */
	record Block(int first, int last) {
	}

	static PackText of(String content, KnowledgeReader reader) {
		return new PackText(content,
				reader.read(KnowledgeFile.of("pack", content), RulePackReader.SCHEMA, PackDraft.class));
	}

	/** Only rules that begin on lines of their own, after all that is about the pack. */
	private void find(PackDraft pack, Reading<PackDraft> reading) {
		List<Integer> starts = new ArrayList<>();
		for (int i = 0; i < pack.rules().size(); i++) {
			starts.add(reading.places().problem("/rules/" + i, "", "").line());
		}
		int head = List.of("/pack", "/version", "/title", "/region")
			.stream()
			.mapToInt((path) -> reading.places().problem(path, "", "").line())
			.max()
			.orElse(0);
		for (int i = 0; i < starts.size(); i++) {
			int first = starts.get(i);
			int last = (i + 1 < starts.size()) ? starts.get(i + 1) - 1 : this.lines.size();
			while (last > first && isBetween(this.lines.get(last - 1))) {
				last--;
			}
			if (first > head && last >= first && this.lines.get(first - 1).strip().startsWith("-")) {
				this.blocks.put(pack.rules().get(i).id(), new Block(first, last));
			}
		}
	}

	private static boolean isBetween(String line) {
		return line.isBlank() || line.strip().startsWith("#");
	}

	/** The pack as written; null when it can't be read. */
	@Nullable PackDraft draft() {
		return this.draft;
	}

	/** The lines of a rule; empty when they can't be told from others. */
	Optional<Block> block(String rule) {
		return Optional.ofNullable(this.blocks.get(rule));
	}

	/** A rule as written, or nothing. */
	String rule(String id) {
		return block(id).map((block) -> String.join("\n", this.lines.subList(block.first - 1, block.last)) + "\n")
			.orElse("");
	}

	/** The pack with other lines in the place of a rule. */
	String with(Block block, String text) {
		List<String> all = new ArrayList<>(this.lines.subList(0, block.first - 1));
		all.addAll(text.stripTrailing().lines().toList());
		all.addAll(this.lines.subList(block.last, this.lines.size()));
		return String.join("\n", all) + "\n";
	}

	/** The text with another version; empty when it says none on a line of its own. */
	static Optional<String> withVersion(String content, int version) {
		Matcher matcher = VERSION.matcher(content);
		return matcher.find() ? Optional.of(matcher.replaceFirst("version: " + version)) : Optional.empty();
	}

	/** Rules that differ, by id; how they are laid out makes no difference. */
	List<String> changedSince(@Nullable PackText before) {
		Map<String, RuleDraft> old = rules(before);
		Map<String, RuleDraft> young = rules(this);
		Set<String> ids = new TreeSet<>(old.keySet());
		ids.addAll(young.keySet());
		return ids.stream().filter((id) -> !Objects.equals(old.get(id), young.get(id))).toList();
	}

	private static Map<String, RuleDraft> rules(@Nullable PackText text) {
		Map<String, RuleDraft> rules = new LinkedHashMap<>();
		if (text != null && text.draft != null) {
			text.draft.rules().forEach((rule) -> rules.put(rule.id(), rule));
		}
		return rules;
	}

}
