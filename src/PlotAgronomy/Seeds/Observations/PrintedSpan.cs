using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Seeds;

/// <summary>The span of what publications print of one figure.</summary>
/// <remarks>
/// Of all rows only those of the best rank speak: what was read for plots and forage, first where the method is named, then where
/// it is not; then for cover crops and grain, in the same order; then practice; memory last, so that it widens nothing. Rows set
/// aside never speak.
/// </remarks>
internal sealed class PrintedSpan
{
    private const int PracticeRank = 4;
    private const int MemoryRank = 5;

    private readonly ImmutableArray<Printed> speaking;
    private readonly int rank;

    private PrintedSpan(ImmutableArray<Printed> speaking, int rank) => (this.speaking, this.rank) = (speaking, rank);

    internal double Low => speaking.Min(p => p.Low);

    internal double High => speaking.Max(p => p.High);

    /// <summary>How many publications speak; none where nothing was read.</summary>
    internal int Publications => rank < PracticeRank ? ByPublication().Count() : 0;

    /// <summary>How many of them print seed as bought, not pure live seed.</summary>
    internal int InBulk =>
        rank < PracticeRank ? speaking.Where(p => p.Unit == KindUnits.Bulk).Select(p => p.Sources[0]).Distinct().Count() : 0;

    /// <summary>Whether the publications that speak do not say by which method.</summary>
    internal bool IsWithoutMethod => rank is 1 or 3;

    internal Origin Origin =>
        new(
            [.. speaking.SelectMany(p => p.Sources).Distinct()],
            speaking.Length == 1 ? speaking[0].Locator : string.Join("; ", speaking.Select(p => p.ToString())),
            DataStatuses.WeakestOf([.. speaking.Select(p => p.Status)])
        );

    /// <summary>The median of what the publications that speak hold for typical: the middle of each one's span; of an even
    /// number of them the lower of the two in the middle, for an average is nobody's figure.</summary>
    internal double Median
    {
        get
        {
            double[] middles = [.. ByPublication().Select(rows => (rows.Min(p => p.Low) + rows.Max(p => p.High)) / 2)];
            Array.Sort(middles);
            return middles[(middles.Length - 1) / 2];
        }
    }

    /// <summary>Whether so many publications on plots and forage speak that their median stands for all.</summary>
    internal bool HasMedian => rank is 0 or 1 && Publications >= SeedConstants.All["median-publications"];

    /// <summary>The span of a figure and method; null where no row speaks.</summary>
    /// <param name="kind">The kind's rows.</param>
    /// <param name="figure">Figure.</param>
    /// <param name="method">Method, or null.</param>
    /// <param name="units">Units in which it may stand.</param>
    /// <param name="withoutMethod">Method under which rows stand that do not say by which method; null where none may.</param>
    internal static PrintedSpan? Of(
        KindObservations kind,
        string figure,
        string? method,
        ReadOnlySpan<string> units,
        string? withoutMethod = null
    )
    {
        var rows = new List<Ranked>();
        foreach (var row in kind.Every(figure, method))
        {
            rows.Add(new(Read(row, units), RankOf(row)));
        }

        if (withoutMethod is not null)
        {
            foreach (var row in kind.Every(figure, withoutMethod).Where(o => DataStatuses.IsSeen(o.Status)))
            {
                rows.Add(new(Read(row, units), RankOf(row) + 1));
            }
        }

        return OfTheBest(rows);
    }

    /// <summary>The span of a figure whose rows hold one number each; null where no row speaks.</summary>
    internal static PrintedSpan? OfNumbers(KindObservations kind, string figure, string method, string unit) =>
        OfTheBest([.. kind.Every(figure, method).Select(o => new Ranked(Number(o, unit), RankOf(o)))]);

    private static PrintedSpan? OfTheBest(List<Ranked> rows)
    {
        rows.RemoveAll(r => r.Row.IsAside);
        if (rows.Count == 0)
        {
            return null;
        }

        int best = rows.Min(r => r.Rank);
        return new([.. rows.Where(r => r.Rank == best).Select(r => r.Row)], best);
    }

    /// <summary>Which rows go before which, the lowest first.</summary>
    internal static int RankOf(KindObservation row) =>
        row.Status switch
        {
            DataStatus.Memory => MemoryRank,
            DataStatus.Practice => PracticeRank,
            _ => row.Purpose is SeedPurpose.CoverCrop or SeedPurpose.Grain ? 2 : 0,
        };

    private static Printed Read(KindObservation row, ReadOnlySpan<string> units)
    {
        var (low, high, unit) = row.Printed(units);
        return new(low, high, unit, row.Sources, row.Locator ?? "", row.Status, row.IsAside);
    }

    private static Printed Number(KindObservation row, string unit)
    {
        double number = row.Number(unit);
        return new(number, number, unit, row.Sources, row.Locator ?? "", row.Status, row.IsAside);
    }

    private IEnumerable<IGrouping<Source, Printed>> ByPublication() => speaking.GroupBy(p => p.Sources[0]);

    private sealed record Ranked(Printed Row, int Rank);

    private sealed record Printed(
        double Low,
        double High,
        string Unit,
        ImmutableArray<Source> Sources,
        string Locator,
        DataStatus Status,
        bool IsAside
    )
    {
        /// <summary>Text such as <c>KIND-WVU 3-5</c>, marked where it is pure live seed.</summary>
        public override string ToString()
        {
            string ids = string.Join("/", Sources.Select(s => s.Id));
            string high = High > Low ? $"-{Amounts.Print(High, 3)}" : "";
            string living = Unit == KindUnits.PureLive ? " PLS" : "";
            return $"{ids} {Amounts.Print(Low, 3)}{high}{living}";
        }
    }
}
