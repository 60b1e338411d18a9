package org.leafward.register.store;

import jakarta.persistence.LockModeType;
import jakarta.persistence.QueryHint;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Pageable;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.jpa.repository.QueryHints;

/** Rows of sites. */
public interface SiteRepository extends JpaRepository<SiteEntity, UUID> {

	@Query("select s from SiteEntity s where s.owner = :owner order by s.name, s.id")
	List<SiteEntity> ofOwner(UUID owner, Pageable page);

	/** In SQL with an array: lists of parameters are translated anew each time. */
	@QueryHints(@QueryHint(name = "org.hibernate.readOnly", value = "true"))
	@Query(nativeQuery = true, value = "select * from register.site where id = any(:sites)")
	List<SiteEntity> among(UUID[] sites);

	@Query("select s.id from SiteEntity s where s.id > :after order by s.id")
	List<UUID> idsAfter(UUID after, Pageable page);

	@Query("select s from SiteEntity s where lower(s.county) in :counties and s.owner <> :but order by s.county, s.name, s.id")
	List<SiteEntity> inCounties(Set<String> counties, UUID but, Pageable page);

	@Query("select s from SiteEntity s where s.owner <> :but order by s.name, s.id")
	List<SiteEntity> all(UUID but, Pageable page);

	@Query("""
			select s from SiteEntity s
			where s.latitude between :south and :north and (s.longitude between :west and :east
				or s.longitude - 360 between :west and :east or s.longitude + 360 between :west and :east)
			order by s.id
			""")
	List<SiteEntity> inside(double south, double north, double west, double east);

	/** Holds the row until the end of the transaction, for checks across its rows. */
	@Lock(LockModeType.PESSIMISTIC_WRITE)
	@Query("select s from SiteEntity s where s.id = :id")
	Optional<SiteEntity> hold(UUID id);

	long countByOwner(UUID owner);

	/** With all that hangs on them. */
	@Modifying(flushAutomatically = true, clearAutomatically = true)
	@Query("delete from SiteEntity s where s.owner = :owner")
	void deleteOfOwner(UUID owner);

	@Modifying(flushAutomatically = true, clearAutomatically = true)
	@Query("update SiteEntity s set s.owner = :into where s.owner = :from")
	void handOver(UUID from, UUID into);

	/** Who entered something at a site of somebody else. */
	@Modifying
	@Query(nativeQuery = true, value = "update register.watering set entered_by = :into where entered_by = :from")
	void renameInWaterings(UUID from, @Nullable UUID into);

	@Modifying
	@Query(nativeQuery = true, value = "update register.soil_test set entered_by = :into where entered_by = :from")
	void renameInSoilTests(UUID from, @Nullable UUID into);

}
