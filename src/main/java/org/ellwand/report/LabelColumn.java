package org.ellwand.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Places of labels that stand as near to what they name as they can without touching. */
final class LabelColumn {
    private LabelColumn() {}

    /** Neighbours that would touch and are moved together: how many, and the mean of what they want. */
    private record Block(int members, double at) {
        Block with(Block next) {
            int all = members + next.members;
            return new Block(all, (members * at + next.members * next.at) / all);
        }
    }

    /**
     * The places with the least sum of squared moves, in the order of {@code wanted}: isotonic regression of what is wanted
     * less the room of the labels before (pool adjacent violators).
     *
     * @param wanted where each label would stand by itself, px
     * @param from no label stands before it
     * @param to none stands behind it, if there is room for all
     * @param apart least distance of two, px
     */
    static List<Double> placed(List<Double> wanted, double from, double to, double apart) {
        int[] order = IntStream.range(0, wanted.size())
                .boxed()
                .sorted(Comparator.comparing(wanted::get))
                .mapToInt(Integer::intValue)
                .toArray();
        List<Block> blocks = new ArrayList<>();
        for (int i = 0; i < order.length; i++) {
            Block block = new Block(1, wanted.get(order[i]) - i * apart);
            while (!blocks.isEmpty() && blocks.get(blocks.size() - 1).at() > block.at()) {
                block = blocks.remove(blocks.size() - 1).with(block);
            }
            blocks.add(block);
        }
        double last = Math.max(from, to - (order.length - 1) * apart);
        Double[] places = new Double[order.length];
        int i = 0;
        for (Block block : blocks) {
            for (int member = 0; member < block.members(); member++, i++) {
                places[order[i]] = Math.max(from, Math.min(last, block.at())) + i * apart;
            }
        }
        return List.of(places);
    }
}
