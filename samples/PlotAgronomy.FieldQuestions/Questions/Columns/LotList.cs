using PlotAgronomy.Columns;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.FieldQuestions.Columns;

/// <summary>A seed house lists five lots of clover and the runs of its spreaders: pounds to sow, seeds on the ground, and which
/// runs cannot be right.</summary>
internal static class LotList
{
    private static readonly double[] Living = [8, 8, 8, 8, 8];
    private static readonly double[] Purity = [98.5, 64.0, 99.0, 97.2, 103];
    private static readonly double[] Germination = [90, 84, 61, double.NaN, 88];
    private static readonly double[] Hard = [4, 8, 30, 6, 5];
    private static readonly double[] Dormant = [0, 0, 0, 0, 0];
    private static readonly double[] SeedsPerPound = [272_000, 268_000, 281_000, 270_000, 275_000];

    private static readonly double[] PoundsPerMinute = [1.2, 2.9, 0.8, 3.4];
    private static readonly double[] MilesPerHour = [3.0, 2.8, 2.5, 55];
    private static readonly double[] SwathFeet = [18, 16, 14, 20];

    internal static void Answer(TextWriter output)
    {
        int lots = Living.Length;
        var (pounds, seeds) = (new double[lots], new double[lots]);
        var (weighed, counted) = (new RowStatus[lots], new RowStatus[lots]);
        var (whys, doubts) = (new ulong[lots], new ulong[lots]);
        var bulk = BulkSeedColumn.ByRule(ViabilityRule.Credit(hardCredit: 0.5, dormantCredit: 0));
        bulk.Rates(Living, Purity, Germination, Hard, Dormant, pounds, weighed, whys);
        SeedDensityColumn.Densities(Living, SeedsPerPound, seeds, counted, doubts);
        for (int lot = 0; lot < lots; lot++)
        {
            output.WriteLine($"lot {Amounts.Print(lot + 1, 0)}: {Print(pounds[lot], "lb/ac")} out of the bag, "
                + $"{Print(seeds[lot], "live seeds/ft2")}");
            output.Warn(bulk.RowFindings.In(whys[lot]).Concat(SeedDensityColumn.RowFindings.In(doubts[lot])));
        }

        int runs = SwathFeet.Length;
        var (rates, run, flags) = (new double[runs], new RowStatus[runs], new ulong[runs]);
        SpreaderColumn.Rates(PoundsPerMinute, MilesPerHour, SwathFeet, rates, run, flags);
        output.WriteLine($"The spreaders laid down {string.Join(", ", rates.Select(r => Print(r, "lb/ac")))}.");
        ulong unlikely = SpreaderColumn.RowFindings.FlagOf("spread-implausible");
        int doubted = flags.Count(f => (f & unlikely) != 0);
        output.WriteLine($"{Amounts.Print(doubted, 0)} of {Amounts.Print(runs, 0)} runs are not believed:");
        output.Warn(SpreaderColumn.RowFindings.In(unlikely));
    }

    private static string Print(double number, string unit) =>
        double.IsNaN(number) ? "unknown" : $"{Amounts.Print(number, 1)} {unit}";
}
