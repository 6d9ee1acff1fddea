using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using PlotAgronomy.Liming;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy;

/// <summary>One institution's way from a soil reading to a lime rate: what it reads, for which soils, targets, depth and
/// lime.</summary>
/// <remarks>Methods from memory answer only when asked for by name (<see cref="Find"/>). If the laboratory printed a lime rate,
/// use that first (<see cref="PrintedLimeRate"/>).</remarks>
/// <example>
/// <code>
/// var report = new SoilReport
/// {
///     Laboratory = "state laboratory",
///     SoilClass = SoilClass.Mineral,
///     WaterPh = WaterPh.FromValue(5.6),
///     BufferPhs = [BufferPh.FromValue(6.4, SoilBuffer.Sikora)],
/// };
/// Console.WriteLine(LimeMethod.Oregon.NeedFor(report, targetPh: 6.4).Rate);
/// // 2.1 ton/ac of 100-score lime to pH 6.4, 6 in deep (Oregon)
/// </code>
/// </example>
[JsonConverter(typeof(NotForJson))]
public sealed partial class LimeMethod
{
    private static readonly Catalog<LimeMethod> Catalog = new(
        "lime method",
        () => Table.Read("Liming/Data/methods.csv", r => new LimeMethod(r)).OrderBy(m => m.Id, StringComparer.Ordinal),
        m => m.Id,
        m => m.Status
    );

    private LimeMethod(CsvRow row)
    {
        Id = row.Text("id");
        Name = row.Text("name");
        Institution = row.Institution();
        Buffers = LimeReadings.Buffers(row);
        Soils = row.Choices<SoilClass>("soils");
        LowestReading = row.Number("reading_low");
        HighestReading = row.Number("reading_high");
        _ = row.NumberOrNull("fades_from");
        NoLimeAboveHighest = row.YesOrNo("no_lime_above_highest");
        LimitsArePrinted = row.YesOrNo("limits_printed");
        Depth = Length.FromInches(row.Number("depth_in"));
        DepthIsPrinted = row.YesOrNo("depth_printed");
        Basis = LimeBasis.Find(row.Text("basis_id"));
        OnlyBelowWaterPh = row.NumberOrNull("only_below_water_ph");
        NoLimeWithinPh = row.NumberOrNull("no_lime_within_ph");
        IsForWeakSoils = row.YesOrNo("for_weak_soils");
        StandingFinding = row.TextOrNull("finding");
        Origin = row.Origin();
        Formula = LimeFormulaReader.Read(row);
    }

    /// <summary>Gets the methods whose numbers were read in a publication, or are practice, in the order of their ids.</summary>
    public static ImmutableArray<LimeMethod> All => Catalog.All;

    /// <summary>Gets the methods that are from memory; they answer only when asked for by name, with a finding.</summary>
    public static ImmutableArray<LimeMethod> Unchecked => Catalog.Unchecked;

    /// <summary>Gets North Carolina's equation by the Mehlich buffer.</summary>
    public static LimeMethod NorthCarolina => Find("north-carolina-mehlich");

    /// <summary>Gets Oregon's tables of 2025 by the Sikora buffer.</summary>
    public static LimeMethod Oregon => Find("oregon-2025-sikora");

    /// <summary>Gets the stable id.</summary>
    public string Id { get; }

    /// <summary>Gets the name.</summary>
    public string Name { get; }

    /// <summary>Gets the institution.</summary>
    public Institution Institution { get; }

    /// <summary>Gets the buffers it is calibrated for; empty when it reads something else.</summary>
    public ImmutableArray<SoilBuffer> Buffers { get; }

    /// <summary>Gets what it reads, in words.</summary>
    public string Reads => Formula.Reads;

    /// <summary>Gets the soils it is meant for.</summary>
    public ImmutableArray<SoilClass> Soils { get; }

    /// <summary>Gets the pHs it gives rates to, rising; empty when any may be asked.</summary>
    public ImmutableArray<double> TargetPhs => Formula.Targets;

    /// <summary>Gets the lowest reading it covers.</summary>
    public double LowestReading { get; }

    /// <summary>Gets the highest reading it covers.</summary>
    public double HighestReading { get; }

    /// <summary>Gets a value indicating whether a reading above the highest means no lime, rather than no answer.</summary>
    public bool NoLimeAboveHighest { get; }

    /// <summary>Gets a value indicating whether the source prints both limits of its readings; else one or both are common
    /// practice.</summary>
    public bool LimitsArePrinted { get; }

    /// <summary>Gets the depth of soil its rates treat.</summary>
    public Length Depth { get; }

    /// <summary>Gets a value indicating whether its source prints that depth; else the usual sampling slice was taken.</summary>
    public bool DepthIsPrinted { get; }

    /// <summary>Gets the lime its rates are counted in.</summary>
    public LimeBasis Basis { get; }

    /// <summary>Gets the water pH from which on it gives no rates, or null.</summary>
    public double? OnlyBelowWaterPh { get; }

    /// <summary>Gets how far below the target the soil must be before the institution limes, in pH; null when it prints no such
    /// margin.</summary>
    public double? NoLimeWithinPh { get; }

    /// <summary>Gets how well its numbers are known. Methods from memory answer only when asked for by name, always with a
    /// finding.</summary>
    public DataStatus Status => Origin.Status;

    /// <summary>Gets where it stands and how well that is known.</summary>
    public Origin Origin { get; }

    /// <summary>Whether it was made for sands and other weakly buffered soils.</summary>
    internal bool IsForWeakSoils { get; }

    internal string? StandingFinding { get; }

    internal LimeFormula Formula { get; }

    /// <summary>Gets the methods, checked or not, in the order of their ids.</summary>
    internal static ImmutableArray<LimeMethod> Everything => Catalog.Everything;

    /// <summary>Finds a method, checked or not.</summary>
    /// <param name="id">Id, such as <c>oregon-2025-sikora</c>.</param>
    /// <returns>The method.</returns>
    /// <exception cref="KeyNotFoundException">No method has this id; the message lists all.</exception>
    public static LimeMethod Find(string id) => Catalog.Find(id);

    /// <summary>Looks for a method, checked or not.</summary>
    /// <param name="id">Id; may be null.</param>
    /// <param name="entry">The method, when there is one.</param>
    /// <param name="problem">What is wrong, with a list of all ids, when there is none; else empty.</param>
    /// <returns>True when there is one.</returns>
    internal static bool TryFind(string? id, [NotNullWhen(true)] out LimeMethod? entry, out string problem) =>
        Catalog.TryFind(id, out entry, out problem);

    /// <summary>The method's own target closest to one asked for; of two as close, the higher.</summary>
    /// <param name="targetPh">pH asked for.</param>
    /// <returns>The closest target; the same pH where any may be asked.</returns>
    public double ClosestTarget(double targetPh)
    {
        LimeLimits.TargetPh(targetPh, nameof(targetPh));
        double closest = targetPh;
        double least = double.PositiveInfinity;
        foreach (double target in TargetPhs)
        {
            double apart = Math.Round(Math.Abs(target - targetPh), 9, MidpointRounding.AwayFromZero);
            if (apart <= least)
            {
                (closest, least) = (target, apart);
            }
        }

        return closest;
    }

    /// <summary>The name.</summary>
    /// <returns>The name.</returns>
    public override string ToString() => Name;
}
