package org.ellwand.check;

import java.util.AbstractMap;
import java.util.Collections;
import java.util.Comparator;
import java.util.Map;
import java.util.NavigableMap;
import java.util.NavigableSet;
import java.util.TreeMap;
import org.ellwand.acoustics.Band;
import org.jspecify.annotations.Nullable;

/** A map by band whose parts, neighbours and orders are looked up in a copy, which nothing changes and which changes nothing. */
abstract class ViewedByCopy extends AbstractMap<Band, Double> implements NavigableMap<Band, Double> {
    private NavigableMap<Band, Double> tree() {
        return Collections.unmodifiableNavigableMap(new TreeMap<>(this));
    }

    @Override
    public @Nullable Comparator<? super Band> comparator() {
        return null;
    }

    @Override
    public Map.@Nullable Entry<Band, Double> lowerEntry(Band band) {
        return tree().lowerEntry(band);
    }

    @Override
    public @Nullable Band lowerKey(Band band) {
        return tree().lowerKey(band);
    }

    @Override
    public Map.@Nullable Entry<Band, Double> floorEntry(Band band) {
        return tree().floorEntry(band);
    }

    @Override
    public @Nullable Band floorKey(Band band) {
        return tree().floorKey(band);
    }

    @Override
    public Map.@Nullable Entry<Band, Double> ceilingEntry(Band band) {
        return tree().ceilingEntry(band);
    }

    @Override
    public @Nullable Band ceilingKey(Band band) {
        return tree().ceilingKey(band);
    }

    @Override
    public Map.@Nullable Entry<Band, Double> higherEntry(Band band) {
        return tree().higherEntry(band);
    }

    @Override
    public @Nullable Band higherKey(Band band) {
        return tree().higherKey(band);
    }

    @Override
    public Map.@Nullable Entry<Band, Double> firstEntry() {
        return tree().firstEntry();
    }

    @Override
    public Map.@Nullable Entry<Band, Double> lastEntry() {
        return tree().lastEntry();
    }

    @Override
    public Map.@Nullable Entry<Band, Double> pollFirstEntry() {
        throw new UnsupportedOperationException("the bands of a curve stay");
    }

    @Override
    public Map.@Nullable Entry<Band, Double> pollLastEntry() {
        throw new UnsupportedOperationException("the bands of a curve stay");
    }

    @Override
    public NavigableMap<Band, Double> descendingMap() {
        return tree().descendingMap();
    }

    @Override
    public NavigableSet<Band> navigableKeySet() {
        return tree().navigableKeySet();
    }

    @Override
    public NavigableSet<Band> descendingKeySet() {
        return tree().descendingKeySet();
    }

    @Override
    public NavigableMap<Band, Double> subMap(Band from, boolean withFrom, Band to, boolean withTo) {
        return tree().subMap(from, withFrom, to, withTo);
    }

    @Override
    public NavigableMap<Band, Double> headMap(Band to, boolean with) {
        return tree().headMap(to, with);
    }

    @Override
    public NavigableMap<Band, Double> tailMap(Band from, boolean with) {
        return tree().tailMap(from, with);
    }

    @Override
    public NavigableMap<Band, Double> subMap(Band from, Band to) {
        return tree().subMap(from, true, to, false);
    }

    @Override
    public NavigableMap<Band, Double> headMap(Band to) {
        return tree().headMap(to, false);
    }

    @Override
    public NavigableMap<Band, Double> tailMap(Band from) {
        return tree().tailMap(from, true);
    }
}
