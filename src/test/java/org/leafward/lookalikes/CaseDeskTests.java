package org.leafward.lookalikes;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.leafward.accounts.Letter;
import org.leafward.accounts.Letters;
import org.leafward.accounts.People;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.Roles;
import org.leafward.lookalikes.store.CaseTable;
import org.leafward.lookalikes.store.NoteTable;
import org.leafward.measure.BadInput;
import org.leafward.support.DemoServer;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.beans.factory.annotation.Autowired;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

/** Replies by mail, with a mail server that only remembers. */
@DemoServer
class CaseDeskTests implements Letters {

	private static final ZoneId ZONE = ZoneId.of("America/Chicago");

	@Autowired
	private Cases cases;

	@Autowired
	private CaseTable table;

	@Autowired
	private NoteTable notes;

	@Autowired
	private Roles roles;

	@Autowired
	private People people;

	private final List<Letter> sent = new ArrayList<>();

	@Override
	public boolean canSend() {
		return true;
	}

	@Override
	public void send(Letter letter) {
		this.sent.add(letter);
	}

	private CaseDesk desk() {
		ObjectProvider<Letters> here = new ObjectProvider<>() {

			@Override
			public Letters getObject() {
				return CaseDeskTests.this;
			}

			@Override
			public Stream<Letters> stream() {
				return Stream.of(getObject());
			}

		};
		return new CaseDesk(this.cases, this.table, this.notes, this.roles, this.people, here,
				"https://garden.example/");
	}

	private PlantCase open(PersonId person, String county) {
		return this.cases.open(person,
				new NewCase(null, null, null, "a shrub", county, ZONE, LocalDate.ofInstant(Instant.now(), ZONE), null));
	}

	@Test
	void aReplyGoesToAConfirmedAddressOnly() {
		String address = UUID.randomUUID() + "@example.org";
		PersonId person = this.people.join("Wilma Trial", address, ZONE).id();
		PlantCase one = open(person, "Alder County");
		PersonId helper = this.people.join("Odalys", UUID.randomUUID() + "@example.org", ZONE).id();
		assertThat(desk().write(one.id(), helper, true, "Look at the roots.")).as("not confirmed").isFalse();
		this.people.confirm(person);
		assertThat(desk().write(one.id(), helper, true, "Look at the roots.")).isTrue();
		assertThat(desk().write(one.id(), person, false, "I will.")).as("their own").isFalse();
		assertThat(this.sent).singleElement().satisfies((letter) -> {
			assertThat(letter.to()).isEqualTo(address);
			assertThat(letter.subject()).isEqualTo("The help desk wrote about your plant");
			assertThat(letter.text()).contains("Look at the roots.", "https://garden.example/cases/" + one.id(),
					"never certain");
		});
		assertThat(desk().notes(one.id())).extracting(CaseNote::fromDesk).containsExactly(true, true, false);
	}

	@Test
	void aCaseWithoutACountyCantBeAskedAbout() {
		PlantCase one = open(this.people.join("Wilma Trial", UUID.randomUUID() + "@example.org", ZONE).id(), "");
		assertThatThrownBy(() -> desk().ask(one.id())).isInstanceOf(BadInput.class).hasMessageContaining("no county");
		assertThatThrownBy(() -> desk().write(one.id(), null, true, " ")).isInstanceOf(BadInput.class);
		assertThatThrownBy(() -> desk().write(one.id(), null, true, "x".repeat(2001))).isInstanceOf(BadInput.class);
	}

}
