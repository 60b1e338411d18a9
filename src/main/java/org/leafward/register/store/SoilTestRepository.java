package org.leafward.register.store;

import jakarta.persistence.QueryHint;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.springframework.data.domain.Pageable;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.jpa.repository.QueryHints;

/** Rows of soil tests. */
public interface SoilTestRepository extends JpaRepository<SoilTestEntity, UUID> {

	long countBySiteAndDay(UUID site, LocalDate day);

	@Query("select t from SoilTestEntity t where t.site = :site order by t.day desc, t.enteredAt desc, t.id")
	List<SoilTestEntity> latest(UUID site, Pageable page);

	/** The latest of each bed and of the whole site; in an order that stays the same. */
	@QueryHints(@QueryHint(name = "org.hibernate.readOnly", value = "true"))
	@Query(nativeQuery = true, value = "select distinct on (site, planting) * from register.soil_test "
			+ "where site = any(:sites) order by site, planting, day desc, entered_at desc, id")
	List<SoilTestEntity> newest(UUID[] sites);

}
