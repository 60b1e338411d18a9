package org.leafward.care.pack;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.leafward.knowledge.KnowledgeFile;
import org.leafward.knowledge.KnowledgeReader;
import org.leafward.knowledge.Problem;
import org.leafward.knowledge.Reading;
import org.springframework.stereotype.Component;

/** Works on packs as text, for those who edit them. */
@Component
public class PackTexts {

	private final KnowledgeReader reader;

	PackTexts(KnowledgeReader reader) {
		this.reader = reader;
	}

	/**
	 * A rule cut out of its pack.
	 *
	 * @param text its lines
	 * @param firstLine where it begins in the pack, from 1
	 */
	public record RuleText(String text, int firstLine) {
	}

	/**
	 * The lines of a rule.
	 * @param content the pack as written
	 * @param rule id of the rule
	 * @return empty when there is no such rule, or it can't be told from others by line
	 */
	public Optional<RuleText> rule(String content, String rule) {
		PackText text = PackText.of(content, this.reader);
		return text.block(rule).map((block) -> new RuleText(text.rule(rule), block.first()));
	}

	/**
	 * Puts a rule back into its pack.
	 * @param content the pack as written
	 * @param rule id of the rule
	 * @param written other lines in its place
	 * @return the pack; empty when there is no such rule
	 */
	public Optional<String> withRule(String content, String rule, String written) {
		PackText text = PackText.of(content, this.reader);
		return text.block(rule).map((block) -> text.with(block, written));
	}

	/**
	 * The text with another version.
	 * @param content the pack as written
	 * @param version the version
	 * @return empty when it says none on a line of its own
	 */
	public Optional<String> withVersion(String content, int version) {
		return PackText.withVersion(content, version);
	}

	/**
	 * Rules that differ between two versions, however they are laid out.
	 * @param before the older one; null for none
	 * @param after the newer one
	 * @return by id
	 */
	public List<String> changed(@Nullable String before, String after) {
		return PackText.of(after, this.reader).changedSince((before != null) ? PackText.of(before, this.reader) : null);
	}

	/**
	 * The id of a pack.
	 * @param content the pack as written
	 * @return empty when it can't be read
	 */
	public Optional<String> pack(String content) {
		return Optional.ofNullable(PackText.of(content, this.reader).draft()).map(PackDraft::pack);
	}

	/**
	 * What keeps a pack from being read, without regard to plants and other packs.
	 * @param name what to call it
	 * @param content the pack as written
	 * @return empty when it can be read
	 */
	public List<Problem> problems(String name, byte[] content) {
		Reading<PackDraft> reading = this.reader.read(new KnowledgeFile(name, content), RulePackReader.SCHEMA,
				PackDraft.class);
		return reading.problems();
	}

}
