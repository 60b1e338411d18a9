package org.leafward.feeds.core;

import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;
import org.leafward.accounts.PersonId;
import org.leafward.care.CareTask;
import org.leafward.care.TaskId;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskState;
import org.leafward.care.TaskText;
import org.leafward.language.Phrasebooks;
import org.leafward.language.Units;
import org.leafward.measure.DayWindow;
import org.leafward.register.PlantingId;
import org.leafward.register.SiteId;

/** Tasks to show. */
public final class CareTaskFixture {

	public static final String BASE = "https://leafward.example";

	/** Words for a reader of English who wants both units. */
	public static final TaskEntries ENTRIES = new TaskEntries(Phrasebooks.english(), Units.BOTH, BASE);

	public static final Instant CHANGED = Instant.parse("2026-03-04T05:06:07Z");

	public static final SiteId SITE = new SiteId(UUID.fromString("5a5a5a5a-0000-4000-8000-000000000001"));

	public static final PersonId PERSON = new PersonId(UUID.fromString("5a5a5a5a-0000-4000-8000-000000000002"));

	private UUID id = UUID.fromString("5a5a5a5a-0000-4000-8000-000000000003");

	private String plant = "hedge by the gate (common boxwood)";

	private TaskKind kind = TaskKind.DO;

	private DayWindow window = new DayWindow(LocalDate.of(2026, 4, 2), LocalDate.of(2026, 4, 9));

	private TaskText text = new TaskText("Water deeply", "Water slowly at the root edge.", "25 mm", "Roots dry out.",
			null, null);

	private TaskState state = TaskState.PLANNED;

	private String because;

	private Instant changed = CHANGED;

	private String siteName = "Allotment 7";

	private CareTaskFixture() {
	}

	public static CareTaskFixture aTask() {
		return new CareTaskFixture();
	}

	public CareTaskFixture numbered(int number) {
		this.id = new UUID(0x5a5a5a5a_0000_4000L, 0x8000_0000_0001_0000L + number);
		return this;
	}

	public CareTaskFixture forPlant(String name) {
		this.plant = name;
		return this;
	}

	public CareTaskFixture of(TaskKind what) {
		this.kind = what;
		return this;
	}

	public CareTaskFixture on(String from, String to) {
		this.window = new DayWindow(LocalDate.parse(from), LocalDate.parse(to));
		return this;
	}

	public CareTaskFixture titled(String title) {
		return saying(new TaskText(title, this.text.what(), this.text.amount(), this.text.why(), null, null));
	}

	public CareTaskFixture saying(TaskText words) {
		this.text = words;
		return this;
	}

	public CareTaskFixture at(String site) {
		this.siteName = site;
		return this;
	}

	public CareTaskFixture withdrawn(String reason, Instant when) {
		this.state = TaskState.WITHDRAWN;
		this.because = reason;
		this.changed = when;
		return this;
	}

	public CareTaskFixture in(TaskState where, String reason) {
		this.state = where;
		this.because = reason;
		return this;
	}

	public CareTask build() {
		return new CareTask(new TaskId(this.id), new PlantingId(SITE.value()), this.plant, SITE, this.siteName, PERSON,
				"basics/water", 2026, 0, this.kind, this.window, this.text, this.state, this.because, 3,
				Instant.parse("2026-01-01T00:00:00Z"), this.changed);
	}

}
