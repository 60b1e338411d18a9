package org.leafward.lookalikes.workshop;

import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.AuditLog;
import org.leafward.accounts.Deed;
import org.leafward.accounts.PersonId;
import org.leafward.knowledge.BrokenKnowledge;
import org.leafward.knowledge.Problem;
import org.leafward.lookalikes.KeyVersion;
import org.leafward.lookalikes.PublishedKeys;
import org.leafward.lookalikes.RecordedCases;
import org.leafward.lookalikes.core.Key;
import org.leafward.lookalikes.core.KeyComparison;
import org.leafward.lookalikes.store.KeyTable;
import org.leafward.measure.BadInput;
import org.leafward.measure.NotThere;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Service;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Where specialists change the key: a draft of a file is read with all the others and
 * tried on recorded cases before it is published as the next version. Nothing is ever
 * overwritten; going back publishes an older content anew.
 */
@Service
public class KeyWorkshop {

	private static final Pattern NAME = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*\\.yaml");

	/** Cases that a draft is tried on. */
	private static final int TRIED_ON = 300;

	private final PublishedKeys keys;

	private final KeyTable table;

	private final ObjectProvider<RecordedCases> cases;

	private final AuditLog audit;

	private final Clock clock;

	private final TransactionTemplate transaction;

	KeyWorkshop(PublishedKeys keys, KeyTable table, ObjectProvider<RecordedCases> cases, AuditLog audit, Clock clock,
			PlatformTransactionManager transactions) {
		this.keys = keys;
		this.table = table;
		this.cases = cases;
		this.audit = audit;
		this.clock = clock;
		this.transaction = new TransactionTemplate(transactions);
	}

	/**
	 * A draft that can be used.
	 *
	 * @param key the key as it would be
	 * @param comparison what it would change in recorded cases
	 */
	public record Drafted(Key key, KeyComparison comparison) {
	}

	/**
	 * The files of the key as they are in force.
	 * @return content by name, by name
	 */
	public Map<String, String> contents() {
		return this.keys.contents();
	}

	/**
	 * The version of a file that is in force.
	 * @param file name of the file
	 * @return 0 for the one that comes with the server
	 */
	public int version(String file) {
		return this.table.of(file, 0, 1).stream().findFirst().map(KeyVersion::version).orElse(0);
	}

	/**
	 * Versions of a file, newest first.
	 * @param file name of the file
	 * @param page from 0
	 * @param size 1 to 200
	 * @return never null
	 */
	public List<KeyVersion> versions(String file, int page, int size) {
		return this.table.of(file, Math.multiplyExact(page, size), size);
	}

	/**
	 * Reads a draft with the other files and tries it on recorded cases.
	 * @param file name of the file, a new one or one that there is
	 * @param content the file as written
	 * @return the draft
	 * @throws BrokenKnowledge with every problem by line
	 * @throws BadInput when the name is none
	 */
	public Drafted draft(String file, String content) {
		Key key = read(file, clean(content));
		RecordedCases recorded = this.cases.getIfAvailable();
		return new Drafted(key,
				KeyComparison.of(this.keys.current(), key, (recorded != null) ? recorded.latest(TRIED_ON) : List.of()));
	}

	private Key read(String file, String content) {
		if (!NAME.matcher(file).matches() || file.length() > 80) {
			throw new BadInput("'%s' is no name of a file".formatted(file), "file",
					"write lower-case words joined by hyphens, and .yaml");
		}
		if (content.length() > KeyVersion.LONGEST || content.indexOf('\0') >= 0) {
			throw new BrokenKnowledge(List.of(new Problem(file, 0, 0, "",
					"the file has more than %d characters, or a NUL character".formatted(KeyVersion.LONGEST),
					"put some of it into a file of its own")));
		}
		return this.keys.with(file, content);
	}

	private static String clean(String content) {
		return content.replace("\r\n", "\n").replace('\r', '\n');
	}

	/**
	 * Publishes a draft as the next version.
	 * @param file name of the file
	 * @param base the version that the draft began with, 0 for the one that comes with
	 * the server or a new file
	 * @param content the file as written
	 * @param note what was changed and why
	 * @param by who; null for an operator
	 * @return the version
	 * @throws BrokenKnowledge when the draft can't be used
	 * @throws BadInput when the note is missing or too long, nothing differs, or another
	 * version was published in between
	 */
	public KeyVersion publish(String file, int base, String content, String note, @Nullable PersonId by) {
		String said = note.strip();
		if (said.isEmpty() || said.length() > KeyVersion.LONGEST_NOTE || said.indexOf('\0') >= 0) {
			throw new BadInput(
					said.isEmpty() ? "the note is missing"
							: "the note is longer than %d characters".formatted(KeyVersion.LONGEST_NOTE),
					"note", "say in a sentence or two what you changed and why");
		}
		String text = clean(content);
		return Objects.requireNonNull(this.transaction.execute((status) -> {
			this.table.lock();
			int newest = version(file);
			if (newest != base) {
				throw new BadInput("version %d of %s was published in between".formatted(newest, file), "base",
						"look at it, and make your change anew");
			}
			read(file, text);
			if (text.equals(this.keys.contents().get(file))) {
				throw new BadInput("nothing differs from version %d".formatted(newest), "content",
						"change something first");
			}
			KeyVersion version = new KeyVersion(file, newest + 1, text, said, by,
					this.clock.instant().truncatedTo(ChronoUnit.SECONDS));
			this.table.write(version);
			this.audit.note(Deed.CHANGED_RULES, null,
					"look-alike key, %s, version %d".formatted(file, version.version()));
			return version;
		}));
	}

	/**
	 * Publishes an older content anew.
	 * @param file name of the file
	 * @param base the version that is there now, as far as whoever asks knows
	 * @param version the older version; 0 for the file that comes with the server
	 * @param note why
	 * @param by who; null for an operator
	 * @return the new version
	 */
	public KeyVersion goBack(String file, int base, int version, String note, @Nullable PersonId by) {
		String content = ((version == 0) ? this.keys.ofServer(file)
				: this.table.find(file, version).map(KeyVersion::content))
			.orElseThrow(() -> new NotThere("There is no version %d of %s".formatted(version, file)));
		return publish(file, base, content, note, by);
	}

}
