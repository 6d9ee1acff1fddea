using PlotAgronomy.Planning;
using PlotAgronomy.Records;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.FieldQuestions.Planning;

/// <summary>Rye and chicory were sown in two falls, and the chicory hardly came up. What does the book change in the plan for
/// the next fall?</summary>
internal static class NextFall
{
    private const string Book =
        """
        what,on,plot,area,method,kind,hoop,plants,part.kind,part.lot,part.used,part.pure,part.germination
        sowing,2025-09-10,Gravel Bar,0.4 ac,broadcast,,,,cereal-rye,R,22 lb,98 %,87 %
        sowing,2025-09-10,Gravel Bar,0.4 ac,broadcast,,,,chicory,C,1 lb,97 %,84 %
        count,2025-10-04,Gravel Bar,,,cereal-rye,1 ft2,11;14;9;12;13;10;12;11,,,,,
        count,2025-10-04,Gravel Bar,,,chicory,1 ft2,0;1;0;0;2;0;1;0,,,,,
        sowing,2026-09-09,Gravel Bar,0.4 ac,broadcast,,,,cereal-rye,S,22 lb,98 %,85 %
        sowing,2026-09-09,Gravel Bar,0.4 ac,broadcast,,,,chicory,D,1 lb,97 %,86 %
        count,2026-10-03,Gravel Bar,,,cereal-rye,1 ft2,12;10;13;9;11;12;10;12,,,,,
        count,2026-10-03,Gravel Bar,,,chicory,1 ft2,0;0;1;0;0;0;1;0,,,,,
        """;

    internal static void Answer(TextWriter output)
    {
        var last = new PlotPlan
        {
            Plot = new Plot { Name = "Gravel Bar", Measured = PlotArea.Stated(Area.FromAcres(0.4)) },
            Method = PlantingMethod.TilledAndPacked,
            PlantingDate = new(2026, 9, 9),
            Kinds = [Half("cereal rye", 50, 18), Half("chicory", 1, 15)],
        };
        var review = PlanReview.Of(last, PlotBook.FromCsv(Book, "book.csv", "tess"), 2026);
        foreach (var change in review.Changes)
        {
            output.WriteLine(change);
            if (change.Reason != change.To)
            {
                output.WriteLine($"  Why: {change.Reason}");
            }
        }

        foreach (var (fall, plan) in new[] { ("last", review.Last), ("next", review.Next) })
        {
            output.WriteLine($"Sown {fall} fall: {string.Join(", ", plan.Solve().Seed.Value.Kinds)}.");
        }
    }

    private static PlannedKind Half(string name, double bag, decimal price)
    {
        var kind = KindCatalog.Standard.Find(name);
        var analysis = SeedAnalysis.FromFractions(Fraction.FromPercent(98), Fraction.FromPercent(86));
        var lot = new SeedLot { Kind = kind, Label = "of this year", Analysis = analysis };
        return new() { Share = KindShare.FromShare(kind, 0.5), Offer = Offer.InBags(lot, Mass.FromPounds(bag), price) };
    }
}
