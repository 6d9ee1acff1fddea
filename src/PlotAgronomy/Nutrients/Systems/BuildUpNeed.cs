using System.Collections.Immutable;
using System.Globalization;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>A need of two parts, and how each came about.</summary>
internal abstract class BuildUpNeed(SystemRequest question, DomainReading reading, double poundsPerAcre, DataStatus status)
    : NutrientNeed(question, reading.Nutrient, poundsPerAcre, status)
{
    public sealed override ImmutableArray<Source> Sources => [.. SourcesOfParts.Distinct()];

    internal sealed override ImmutableArray<Finding> Findings
    {
        get
        {
            var findings = ImmutableArray.CreateBuilder<Finding>();
            findings.AddRange(FindingsOfParts);
            if (!Question.Crop.IsCarriedOff)
            {
                findings.Add(FindingCatalog.Create(NutrientCodes.NothingCarriedOff, ("system", Question.System.Name)));
            }

            if (IsCapped)
            {
                findings.Add(
                    FindingCatalog.Create(
                        NutrientCodes.YearlyCap,
                        ("system", Question.System.Name),
                        ("nutrient", NutrientInWords),
                        ("rate", Amounts.Print(Raising + Replacing, 1)),
                        ("cap", Amounts.Print(Rate.PoundsPerAcre, 4))
                    )
                );
            }

            return findings.ToImmutable();
        }
    }

    private protected DomainReading Reading => reading;

    private protected double Raising => Kernel.BuildUp(reading.Value, Capacity);

    private protected double Replacing => Kernel.Replaced(reading.Value, Capacity);

    private protected sealed override double? RaisingPart => Raising;

    private protected sealed override double? ReplacingPart => Replacing;

    /// <summary>The sum the rate came from, made again for whoever asks for more than the rate.</summary>
    private protected abstract IBuildUpKernel Kernel { get; }

    private protected Replacement Removal =>
        Nutrients.Replacement.For(Question.System.Id, Question.Crop, reading.Nutrient)!.Value;

    private protected string NutrientInWords => SoilWords.For(reading.Nutrient);

    private protected bool IsPotash => reading.Nutrient == PlantNutrient.Potash;

    private protected abstract ImmutableArray<Source> SourcesOfParts { get; }

    private protected virtual ImmutableArray<Finding> FindingsOfParts => [];

    /// <summary>Exchange capacity in meq/100 g; 0 where it is not known and not asked for.</summary>
    private protected double Capacity => Question.CecPer100Grams ?? 0;

    private bool IsCapped => Noticed(NeedRemarks.YearlyCap);

    private protected bool Noticed(NeedRemarks remark) =>
        Kernel.Remarks(reading.Value, Capacity, Rate.PoundsPerAcre).HasFlag(remark);

    internal sealed override ImmutableArray<WorkedLine> Work() => [.. LinesOfParts(), Total()];

    private protected abstract IEnumerable<WorkedLine> LinesOfParts();

    /// <summary>What goes back: the system's own sum, or that nothing left.</summary>
    private protected ImmutableArray<WorkedLine> ReplacementLines(Func<WorkedLine> sum) =>
        Removal.IsCarriedOff ? [Removal.Line(NutrientInWords), sum()] : [Removal.Line(NutrientInWords)];

    private WorkedLine Total() =>
        NutrientFormulas
            .All[IsCapped ? "tri-state-1995-yearly-cap" : "build-up-and-replacement"]
            .Line(
                NutrientFormulas.PerAcre(Rate.PoundsPerAcre),
                ("nutrient", NutrientInWords),
                ("yearly cap", NutrientFormulas.Number(double.IsFinite(Kernel.Cap) ? Kernel.Cap : Rate.PoundsPerAcre)),
                ("build-up", Tenths(Raising)),
                ("replacement", Tenths(Replacing))
            );

    private static string Tenths(double pounds) => pounds.ToString("0.0", CultureInfo.InvariantCulture);
}
