using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>The sum inside a lime method: what it reads and what it makes of it. Answers in lb/ac of the method's
/// basis.</summary>
internal abstract class LimeFormula(CsvRow method)
{
    /// <summary>Target pHs it gives rates for; empty when any target can be asked.</summary>
    internal virtual ImmutableArray<double> Targets => [];

    /// <summary>Whether its own findings say why it gives no rate; else the table prints none there.</summary>
    internal virtual bool SaysWhyNoRate => false;

    /// <summary>What it reads, in words.</summary>
    internal abstract string Reads { get; }

    /// <summary>Whether the reading is a pH, so that a reading error in pH can be laid on it. Acidity then falls as it
    /// rises.</summary>
    internal virtual bool ReadsPh => false;

    internal virtual bool NeedsWaterPh => false;

    protected string MethodName { get; } = method.Text("name");

    internal abstract double? ReadingOf(PlotSoil soil);

    /// <summary>Unrounded rate, below zero where the equation goes there; null where the table prints none.</summary>
    internal abstract double? PoundsPerAcre(double reading, PlotSoil soil, double targetPh);

    internal abstract IEnumerable<WorkedLine> Work(double reading, PlotSoil soil, double targetPh);

    /// <summary>Whether the formula holds for this soil and target. Asked only when what it needs is there.</summary>
    internal virtual bool Holds(PlotSoil soil, double targetPh) => true;

    /// <summary>Why the formula does not hold for this soil and target, or null.</summary>
    internal virtual Finding? Refusal(PlotSoil soil, double targetPh) => null;

    internal virtual IEnumerable<Finding> Findings(double reading, PlotSoil soil, double targetPh) => [];
}
