package bandwright.pipeline.write.proofs;

import bandwright.pipeline.Run;
import bandwright.pipeline.type.Captions;
import bandwright.pipeline.write.OutFile;
import bandwright.pipeline.write.Output;
import bandwright.rules.Rulebook;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** proofs/Q1042.png: the pieces of an order in their own colours, for the buyer. */
public final class Proofs implements Output {
    @Override
    public List<OutFile> files(Run run, Rulebook rules) {
        Captions captions = new Captions();
        Map<String, String> codes = ProofOrder.codes(run);
        List<ProofOrder> orders = ProofOrder.of(run, rules);
        Ahead<byte[]> pictures = new Ahead<>(orders.stream()
                .<Supplier<byte[]>>map(order ->
                        () -> PngFile.of(new ProofPicture(ProofPiece.of(order.units(), codes), run.sights(), captions)
                                .draw(order.order())))
                .collect(Collectors.toList()));
        List<OutFile> files = new ArrayList<>();
        for (int i = 0; i < orders.size(); i++) {
            int number = i;
            files.add(new OutFile(orders.get(i).file(), out -> out.write(pictures.get(number))));
        }
        return files;
    }
}
