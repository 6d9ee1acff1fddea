using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;
using UnitsNet;

namespace PlotAgronomy.Liming;

/// <summary>One institution's way from a soil reading to a lime rate: what it reads, for which soils, targets, depth and
/// lime.</summary>
public sealed class LimeMethod
{
    internal LimeMethod(CsvRow row)
    {
        Id = row.Text("id");
        Name = row.Text("name");
        Institution = row.Text("institution");
        Buffers = LimeReadings.Buffers(row);
        Soils = row.Choices<SoilClass>("soils");
        LowestReading = row.Number("reading_low");
        HighestReading = row.Number("reading_high");
        NoLimeAboveHighest = row.Text("above_highest") == "none";
        LimitsArePrinted = row.YesOrNo("limits_printed");
        Depth = Length.FromInches(row.Number("depth_in"));
        DepthIsPrinted = row.YesOrNo("depth_printed");
        Basis = LimeBasis.Find(row.Text("basis_id"));
        OnlyBelowWaterPh = row.NumberOrNull("only_below_water_ph");
        NoLimeWithinPh = row.NumberOrNull("no_lime_within_ph");
        StandingFinding = row.TextOrNull("finding");
        SourceId = row.SourceId();
        Status = row.Status();
        Formula = LimeFormula.Create(row);
    }

    /// <summary>Gets the stable id.</summary>
    public string Id { get; }

    /// <summary>Gets the name.</summary>
    public string Name { get; }

    /// <summary>Gets the institution.</summary>
    public string Institution { get; }

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
    public DataStatus Status { get; }

    /// <summary>Gets the id of its source.</summary>
    public string SourceId { get; }

    /// <summary>Gets a value indicating whether its publication was replaced by a newer one.</summary>
    public bool IsSuperseded => SourceCatalog.Find(SourceId).SupersededBy is not null;

    internal string? StandingFinding { get; }

    internal LimeFormula Formula { get; }

    /// <summary>The lime a soil needs by this method.</summary>
    /// <param name="sample">Report and readings.</param>
    /// <param name="targetPh">pH aimed at; from 4 to 9.</param>
    /// <param name="earlier">Lime put on before that is not yet all at work, or null.</param>
    /// <param name="readingErrorPh">How far a pH reading may be off; from 0 to 1; null takes 0.1 (LIME-S38).</param>
    /// <returns>The need; its rate is null, with a finding, where the method does not answer.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public LimeNeed NeedFor(LimeSample sample, double targetPh, EarlierLime? earlier = null, double? readingErrorPh = null)
    {
        ArgumentNullException.ThrowIfNull(sample);
        double target = Guard.Between(targetPh, 4, 9, "pH");
        double error = Guard.Between(readingErrorPh ?? LimingConstants.All["reading-error"], 0, 1, "pH", nameof(readingErrorPh));
        return new LimeReckoning(this, sample, target, earlier, error).Answer();
    }

    /// <summary>The lime a soil needs by this method, from a report alone.</summary>
    /// <param name="report">Report.</param>
    /// <param name="targetPh">pH aimed at; from 4 to 9.</param>
    /// <param name="earlier">Lime put on before that is not yet all at work, or null.</param>
    /// <param name="readingErrorPh">How far a pH reading may be off; from 0 to 1; null takes 0.1 (LIME-S38).</param>
    /// <returns>The need.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public LimeNeed NeedFor(SoilReport report, double targetPh, EarlierLime? earlier = null, double? readingErrorPh = null) =>
        NeedFor(LimeSample.From(report), targetPh, earlier, readingErrorPh);

    /// <summary>The method's own target closest to one asked for; of two as close, the higher.</summary>
    /// <param name="targetPh">pH asked for.</param>
    /// <returns>The closest target; the same pH where any may be asked.</returns>
    public double ClosestTarget(double targetPh)
    {
        Guard.Between(targetPh, 4, 9, "pH");
        return TargetPhs.IsEmpty
            ? targetPh
            : TargetPhs
                .OrderBy(t => Math.Round(Math.Abs(t - targetPh), 9, MidpointRounding.AwayFromZero))
                .ThenByDescending(t => t)
                .First();
    }

    /// <summary>The name.</summary>
    /// <returns>The name.</returns>
    public override string ToString() => Name;
}
