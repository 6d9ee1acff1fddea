using System.Collections.Immutable;
using System.Globalization;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>The two parts of a build-up answer and how each came about.</summary>
internal abstract class BuildUpGrounds(RecommendationSystem system, SystemRequest question, DomainReading reading) : NeedGrounds
{
    internal double BuildUp => Kernel.BuildUp(reading.Value, Capacity);

    internal double Replaced => Kernel.Replaced(reading.Value, Capacity);

    internal double Rate => Kernel.Rate(reading.Value, Capacity);

    internal override double? RaisingPart => BuildUp;

    internal override double? ReplacingPart => Replaced;

    internal DomainReading Reading => reading;

    internal override ImmutableArray<Source> Sources => [.. SourcesOfParts.Distinct()];

    internal override ImmutableArray<Finding> Findings
    {
        get
        {
            var findings = ImmutableArray.CreateBuilder<Finding>();
            findings.AddRange(FindingsOfParts);
            if (!question.Crop.IsCarriedOff)
            {
                findings.Add(FindingCatalog.Create(NutrientCodes.NothingCarriedOff, ("system", system.Name)));
            }

            if (IsCapped)
            {
                findings.Add(
                    FindingCatalog.Create(
                        NutrientCodes.YearlyCap,
                        ("system", system.Name),
                        ("nutrient", NutrientInWords),
                        ("rate", Amounts.Print(BuildUp + Replaced, 1)),
                        ("cap", Amounts.Print(Rate, 4))
                    )
                );
            }

            return findings.ToImmutable();
        }
    }

    private protected RecommendationSystem System => system;

    private protected SystemRequest Question => question;

    /// <summary>The sum the rate came from, made again for whoever asks for more than the rate.</summary>
    private protected abstract IBuildUpKernel Kernel { get; }

    private protected Replacement Replacement =>
        PlotAgronomy.Nutrients.Replacement.For(system.Id, question.Crop, reading.Nutrient)!.Value;

    private protected string NutrientInWords => SoilWords.For(reading.Nutrient);

    private protected bool IsPotash => reading.Nutrient == PlantNutrient.Potash;

    private protected abstract ImmutableArray<Source> SourcesOfParts { get; }

    private protected virtual ImmutableArray<Finding> FindingsOfParts => [];

    /// <summary>Exchange capacity in meq/100 g; 0 where it is not known and not asked for.</summary>
    private protected double Capacity => question.CecPer100Grams ?? 0;

    private bool IsCapped => Noticed(NeedRemarks.YearlyCap);

    private protected bool Noticed(NeedRemarks remark) => Kernel.Remarks(reading.Value, Capacity, Rate).HasFlag(remark);

    internal override ImmutableArray<WorkedLine> Lines() => [.. LinesOfParts(), Total()];

    private protected abstract IEnumerable<WorkedLine> LinesOfParts();

    /// <summary>What goes back: the system's own sum, or that nothing left.</summary>
    private protected ImmutableArray<WorkedLine> ReplacementLines(Func<WorkedLine> sum) =>
        Replacement.IsCarriedOff ? [Replacement.Line(NutrientInWords), sum()] : [Replacement.Line(NutrientInWords)];

    private WorkedLine Total() =>
        NutrientFormulas
            .All[IsCapped ? "tri-state-1995-yearly-cap" : "build-up-and-replacement"]
            .Line(
                NutrientFormulas.PerAcre(Rate),
                ("nutrient", NutrientInWords),
                ("yearly cap", NutrientFormulas.Number(double.IsFinite(Kernel.Cap) ? Kernel.Cap : Rate)),
                ("build-up", Tenths(BuildUp)),
                ("replacement", Tenths(Replaced))
            );

    private static string Tenths(double pounds) => pounds.ToString("0.0", CultureInfo.InvariantCulture);
}
