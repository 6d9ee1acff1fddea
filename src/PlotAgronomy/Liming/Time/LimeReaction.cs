using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>The share of a lime that has worked after a time, by its fineness, as a range.</summary>
/// <remarks>Finer than 100 mesh: all in 2 to 3 months (LIME-S22). 60 to 100 mesh: 80 % in a year; 20 to 60 mesh: 40 % in a
/// year; coarser: none in a year (LIME-S16). Straight lines in time up to these points, level after them (PRACTICE).
/// Fineness not known: as the coarsest that may be sold as ground lime (LIME-S22), to all in 6 months (LIME-S17); hydrated and
/// burnt lime: all in 6 to 12 months (LIME-S15).</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class LimeReaction
{
    private static readonly Table<Band> Bands = new("Liming/Data/reaction.csv", Band.FromRow);

    /// <summary>The coarsest lime that may be sold as ground, by the sieves the bands read.</summary>
    private static readonly Lazy<SieveAnalysis> GroundGrade = new(() =>
        SieveAnalysis.FromPercent(
            (20, LimingConstants.All["ground-grade-20"]),
            (60, LimingConstants.All["ground-grade-60"]),
            (100, LimingConstants.All["ground-grade-100"])
        )
    );

    private LimeReaction(LimingMaterial material, double months, bool finenessKnown, double low, double high)
    {
        Material = material;
        Months = months;
        FinenessKnown = finenessKnown;
        Low = Fraction.FromValue(Math.Min(low, high));
        High = Fraction.FromValue(Math.Min(1, high));
    }

    /// <summary>Gets the material.</summary>
    public LimingMaterial Material { get; }

    /// <summary>Gets the months after liming.</summary>
    public double Months { get; }

    /// <summary>Gets a value indicating whether the sieve analysis was known well enough to use it.</summary>
    public bool FinenessKnown { get; }

    /// <summary>Gets the smaller share that has worked.</summary>
    public Fraction Low { get; }

    /// <summary>Gets the larger share that has worked.</summary>
    public Fraction High { get; }

    internal static IEnumerable<Source> Sources => Bands.Rows.SelectMany(b => b.Origin.Sources);

    /// <summary>Share that has worked.</summary>
    /// <param name="material">Material.</param>
    /// <param name="months">Months after liming; finite, at least 0.</param>
    /// <returns>The share, as a range.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite months.</exception>
    public static LimeReaction After(LimingMaterial material, double months)
    {
        ArgumentNullException.ThrowIfNull(material);
        Guard.AtLeast(months, 0, "months");
        if (!material.Neutralizes)
        {
            return new(material, months, true, 0, 0);
        }

        return FinenessOf(material) is { } sieves
            ? OfFineness(material, sieves, months)
            : new(
                material,
                months,
                false,
                material.IsCaustic
                    ? LimeTimes.WorkedOfUnknownFineness(months, LimingConstants.All["unknown-fineness-latest"])
                    : OfFineness(material, GroundGrade.Value, months).Low.Value,
                LimeTimes.WorkedOfUnknownFineness(months, LimingConstants.All["unknown-fineness-soonest"])
            );
    }

    /// <summary>How the share was reckoned: by band for the slower end, or straight on where the fineness is not known.</summary>
    internal static IEnumerable<WorkedLine> Work(LimingMaterial material, double months)
    {
        if (!material.Neutralizes)
        {
            return [];
        }

        return FinenessOf(material) is { } sieves ? Bands.Rows.Select(b => b.LineOf(sieves, months))
            : material.IsCaustic ? [Line("least", "unknown-fineness-latest"), Line("most", "unknown-fineness-soonest")]
            : [.. Bands.Rows.Select(b => b.LineOf(GroundGrade.Value, months)), Line("most", "unknown-fineness-soonest")];

        WorkedLine Line(string end, string constantId)
        {
            var constant = LimingConstants.All.Find(constantId);
            double worked = LimeTimes.WorkedOfUnknownFineness(months, constant.Value);
            return LimingFormulas
                .All["lime-worked-unknown-fineness"]
                .Line(
                    Amounts.Print(Fraction.FromValue(worked), 0),
                    ("end", end),
                    ("months", Amounts.Print(months, 1)),
                    ("months to full effect", Amounts.Print(constant.Value, 1))
                )
                .From(constant.Origin);
        }
    }

    /// <summary>Text such as <c>40 % to 55 % after 4 months</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{Part} after {Amounts.Print(Months, 1)} months";

    /// <summary>The part that has worked, such as <c>40 % to 55 %</c>, or one figure.</summary>
    internal string Part =>
        Amounts.Print(Low, 0) is var low && Amounts.Print(High, 0) is var high && low == high ? low : $"{low} to {high}";

    private static LimeReaction OfFineness(LimingMaterial material, SieveAnalysis sieves, double months)
    {
        double low = 0;
        double high = 0;
        foreach (var band in Bands.Rows)
        {
            low += band.Worked(sieves, months, band.MonthsLatest);
            high += band.Worked(sieves, months, band.MonthsSoonest);
        }

        return new(material, months, true, low, high);
    }

    private static SieveAnalysis? FinenessOf(LimingMaterial material) =>
        material.Sieves is { } sieves && Bands.Rows.All(b => b.IsKnown(sieves)) ? sieves : null;

    private sealed record Band(
        int PassingMesh,
        int? HeldOnMesh,
        double Share,
        double MonthsSoonest,
        double MonthsLatest,
        Origin Origin
    )
    {
        internal bool IsKnown(SieveAnalysis sieves) =>
            sieves.Knows(PassingMesh) && (HeldOnMesh is not int held || sieves.Knows(held));

        internal double Worked(SieveAnalysis sieves, double months, double monthsToShare) =>
            LimeTimes.BandWorked(ShareIn(sieves), Share, months, monthsToShare);

        internal WorkedLine LineOf(SieveAnalysis sieves, double months)
        {
            string held = HeldOnMesh is int mesh ? $", held on {Amounts.Print(mesh, 0)}" : "";
            double share = ShareIn(sieves);
            return LimingFormulas
                .All["lime-band-worked"]
                .Line(
                    Amounts.Print(LimeTimes.BandWorked(share, Share, months, MonthsLatest), 2),
                    ("band", $"passing {Amounts.Print(PassingMesh, 0)} mesh{held}"),
                    ("share in the band", Amounts.Print(share, 2)),
                    ("share that works", Amounts.Print(Share, 2)),
                    ("months", Amounts.Print(months, 1)),
                    ("months to that share", Amounts.Print(MonthsLatest, 1))
                )
                .From(Origin);
        }

        private double ShareIn(SieveAnalysis sieves) =>
            sieves.SharePassing(PassingMesh).Value - (HeldOnMesh is int held ? sieves.SharePassing(held).Value : 0);

        internal static Band FromRow(CsvRow row) =>
            new(
                row.Integer("passing_mesh"),
                row.TextOrNull("held_on_mesh") is null ? null : row.Integer("held_on_mesh"),
                row.Number("share"),
                row.Number("soonest_months"),
                row.Number("latest_months"),
                row.Origin()
            );
    }
}
