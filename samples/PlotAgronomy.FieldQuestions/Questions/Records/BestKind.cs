using PlotAgronomy.Records;

namespace PlotAgronomy.FieldQuestions.Records;

/// <summary>Three years of sowings and counts on two plots, kept as a table. Which kind comes up best here, and was it the
/// rain?</summary>
internal static class BestKind
{
    private const string Table =
        """
        what,on,plot,area,method,rain,days,kind,hoop,plants,part.kind,part.lot,part.used,part.pure,part.germination
        rain,2024-08-28,creek,,,0.9 in,10,,,,,,,,
        sowing,2024-09-01,creek,0.5 ac,broadcast,,,,,,crimson-clover,A,9 lb,98 %,85 %
        rain,2024-09-20,creek,,,2.2 in,18,,,,,,,,
        count,2024-09-26,creek,,,,,crimson-clover,1 ft2,16;19;13;21;17;15,,,,,
        sowing,2024-09-01,ridge,0.4 ac,broadcast,,,,,,medium-red-clover,B,4 lb,98 %,88 %
        count,2024-09-27,ridge,,,,,medium-red-clover,1 ft2,14;11;16;9;13;12,,,,,
        sowing,2025-09-03,creek,0.5 ac,broadcast,,,,,,medium-red-clover,C,5 lb,97 %,86 %
        rain,2025-09-30,creek,,,0.7 in,26,,,,,,,,
        count,2025-09-29,creek,,,,,medium-red-clover,1 ft2,8;10;7;12;9;6,,,,,
        sowing,2025-09-03,ridge,0.4 ac,broadcast,,,,,,crimson-clover,D,7 lb,98 %,84 %
        count,2025-09-28,ridge,,,,,crimson-clover,1 ft2,18;22;15;20;19;16,,,,,
        sowing,2026-09-02,creek,0.5 ac,broadcast,,,,,,crimson-clover,E,9 lb,98 %,85 %
        rain,2026-09-25,creek,,,3.1 in,22,,,,,,,,
        count,2026-09-27,creek,,,,,crimson-clover,1 ft2,20;24;17;22;19;23,,,,,
        """;

    internal static void Answer(TextWriter output)
    {
        var book = PlotBook.FromCsv(Table, "table", "ned");
        foreach (var stand in book.Plots.SelectMany(plot => StandOutcome.All(book, plot)).Select(s => s.Value))
        {
            output.WriteLine($"{stand.SownOn.Year}, {stand.Count.Plot}: {stand}");
            output.Warn(stand.Findings);
            var (before, after) = (Inches(stand.RainBefore), Inches(stand.RainAfter));
            output.WriteLine($"  rain: {before} in the two weeks before, {after} in the four after");
        }

        var ranking = KindRanking.Of(book, RankedMeasure.Emergence);
        output.WriteLine($"Of all living seed {Amounts.Print(100 * ranking.MeanOfAll!.Value, 0)} % came up.");
        foreach (var kind in ranking.Kinds)
        {
            string expected = Amounts.Print(100 * kind.Shrunk, 0);
            output.WriteLine($"{kind.Name}: {expected} % is to be expected of it, after {kind.Observations} stands.");
        }

        output.Tell(ranking);
    }

    private static string Inches(Length? rain) => rain is { } fell ? Amounts.Print(fell, "in", 1) : "no gauge";
}
