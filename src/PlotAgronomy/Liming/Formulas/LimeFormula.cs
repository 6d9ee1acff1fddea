using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

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

    /// <summary>Whether the reading is the water pH itself.</summary>
    internal virtual bool ReadsWaterPh => false;

    internal virtual bool NeedsWaterPh => false;

    /// <summary>The least and the most that its reading can be at all, whatever the method covers.</summary>
    internal virtual (double Least, double Most) PossibleReadings =>
        ReadsPh ? (double.Epsilon, PhScale.Highest) : (0, double.MaxValue);

    /// <summary>What its kernel may notice.</summary>
    internal virtual LimeRemarks MayRemark => LimeRemarks.None;

    /// <summary>The finding of printed cells that have one of their own; null where none has.</summary>
    internal virtual string? CellFinding => null;

    protected string MethodName { get; } = method.Text("name");

    internal abstract double? ReadingOf(PlotSoil soil);

    internal bool Offers(double targetPh) => Targets.IsEmpty || Targets.Contains(targetPh);

    /// <summary>Whether soil of this texture is read at all.</summary>
    internal virtual bool TakesTexture(SoilTexture? texture) => true;

    /// <summary>Unrounded rate, below zero where the equation goes there; null where the table prints none.</summary>
    internal abstract double? PoundsPerAcre(double reading, PlotSoil soil, double targetPh);

    /// <summary>Hands the kernel over that counts to a target on soil of a texture.</summary>
    internal abstract T GiveKernel<T>(ILimeKernelUser<T> user, double targetPh, SoilTexture? texture);

    internal abstract IEnumerable<WorkedLine> Work(double reading, PlotSoil soil, double targetPh);

    /// <summary>The lowest water pH that the formula holds for to a target, and the lowest reading where no pH is
    /// known.</summary>
    internal virtual (double LowestPh, double LowestReadingWithoutPh) Domain(double targetPh) =>
        (double.NegativeInfinity, double.NegativeInfinity);

    /// <summary>What is said where the formula does not hold; null for one that always does.</summary>
    /// <param name="waterPh">Water pH in words.</param>
    /// <param name="targetPh">Target.</param>
    internal virtual Finding? Refusal(string waterPh, double targetPh) => null;

    /// <summary>What there is to say of a texture, whatever the reading.</summary>
    internal virtual IEnumerable<Finding> AboutTexture(SoilTexture? texture) => [];

    internal virtual IEnumerable<Finding> Findings(double reading, PlotSoil soil, double targetPh) => [];
}
