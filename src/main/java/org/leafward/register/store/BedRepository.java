package org.leafward.register.store;

import jakarta.persistence.QueryHint;
import java.util.List;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.jpa.repository.QueryHints;

/** Rows of beds. */
public interface BedRepository extends JpaRepository<BedEntity, UUID> {

	@Query("select b from BedEntity b where b.site = :site order by lower(b.name), b.id")
	List<BedEntity> ofSite(UUID site);

	/** In SQL with an array: lists of parameters are translated anew each time. */
	@QueryHints(@QueryHint(name = "org.hibernate.readOnly", value = "true"))
	@Query(nativeQuery = true, value = "select * from register.bed where site = any(:sites) order by lower(name), id")
	List<BedEntity> ofSites(UUID[] sites);

	long countBySite(UUID site);

}
