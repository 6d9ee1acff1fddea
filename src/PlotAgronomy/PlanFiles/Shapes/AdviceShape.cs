using PlotAgronomy.Liming;
using static PlotAgronomy.PlanFiles.Value;

namespace PlotAgronomy.PlanFiles;

/// <summary>What the laboratory itself recommended.</summary>
internal sealed class AdviceShape : PlanShape<PrintedAdvice, PlotPlan>
{
    /// <param name="laboratory">Field of the report around it: the laboratory that printed it.</param>
    internal AdviceShape(PlanField<string> laboratory)
        : base("printedRecommendation", "What the laboratory itself recommended; used first.")
    {
        var crop = Optional("crop", Text("wildlife plot"), "Crop it was printed for.", p =>
            p.Printed!.Crop == PrintedAdvice.UnnamedCrop ? null : p.Printed.Crop
        );
        var lime = Optional("lime", Lime(laboratory), "Lime.", p => p.Printed!.Lime is null ? null : p)
            .Answers(LimingCodes.AskNearest);
        var nitrogen = Optional(
            "nitrogen",
            new PlanRateRange("40 lb/ac"),
            "Nitrogen, N: the first of three numbers such as 60-40-80.",
            p => RateRange.Of(p.Printed!.Nitrogen, p.Printed.NitrogenUpTo)
        );
        var phosphate = Optional("phosphate", new PlanRateRange("60 lb/ac"), "Phosphate, P2O5: the second of them.", p =>
            RateRange.Of(p.Printed!.Phosphate, p.Printed.PhosphateUpTo)
        );
        var potash = Optional("potash", new PlanRateRange("1.5 lb/1000 ft2"), "Potash, K2O: the third.", p =>
            RateRange.Of(p.Printed!.Potash, p.Printed.PotashUpTo)
        );

        ReadAs(at =>
            new()
            {
                Crop = at.Find(crop) ?? PrintedAdvice.UnnamedCrop,
                Lime = at.Find(lime),
                Nitrogen = at.Maybe(nitrogen)?.Low,
                NitrogenUpTo = at.Maybe(nitrogen)?.High,
                Phosphate = at.Maybe(phosphate)?.Low,
                PhosphateUpTo = at.Maybe(phosphate)?.High,
                Potash = at.Maybe(potash)?.Low,
                PotashUpTo = at.Maybe(potash)?.High,
            }
        );
    }

    private static PlanShape<PrintedLimeRate, PlotPlan> Lime(PlanField<string> ofReport)
    {
        var shape = new PlanShape<PrintedLimeRate, PlotPlan>(
            "printedLime",
            "The lime rate the laboratory printed, with its labels."
        );
        static PrintedLimeRate Of(PlotPlan plan) => plan.Printed!.Lime!;
        var rate = shape.Required(
            "rate",
            new PlanRateRange("1.5 ton/ac", "1 to 1.5 ton/ac"),
            "Rate as printed, with its acre: a report's 2 tons are `2 ton/ac`; of a range both ends are kept, and which is "
                + "meant is asked.",
            p => RateRange.Of(Of(p).OfBasis, Of(p).UpTo)
        ).Answers(LimingCodes.AskRange);
        var bases = Choice(LimeBasis.Everything, b => b.Id);
        const string OfWhich =
            "Lime the rate is counted in; left out where the report does not say, and the orders under each stand side by side.";
        var basis = shape.Optional("basis", bases, OfWhich, p => Of(p).Basis).Answers(LimingCodes.AskBasis);
        const string Aim = "pH it aims at; left out where the report does not say.";
        var targetPh = shape.Optional("targetPh", NumberWithin<double>("printed-target-ph"), Aim, p => Of(p).TargetPh)
            .Answers(LimingCodes.AskTarget);
        const string Deep =
            "Depth of soil it treats; left out where the report does not say, and the rate is then taken as it stands.";
        var depth = shape.Optional("depth", Length("8 in"), Deep, p => Of(p).Depth).Answers(LimingCodes.AskDepth);
        var institution = shape.Optional(
            "institution",
            Text<Institution>(Institution.NorthCarolina.Name, Institution.TryFind, i => i.IsListed ? i.Name : null),
            "Institution whose table the laboratory went by; without it, the laboratory itself.",
            p => Of(p).Institution == OfLaboratory(p.ReportOrNone.Laboratory) ? null : Of(p).Institution
        );
        shape.Unsaid("a rate of no institution from a laboratory that is named", p =>
            Of(p).Institution is null && OfLaboratory(p.ReportOrNone.Laboratory) is not null
        );

        shape.ReadAs(at =>
        {
            var laboratory = at.Around.Around.Find(ofReport);
            var whose = at.Find(institution) ?? OfLaboratory(laboratory);
            return at.Try(rate, () =>
                PrintedLimeRate.Read(
                    at.Get(rate).Low,
                    at.Maybe(targetPh),
                    at.Maybe(depth),
                    at.Find(basis),
                    whose,
                    at.Get(rate).High
                )
            );
        });
        return shape;
    }

    private static Institution? OfLaboratory(string? laboratory) =>
        laboratory is null or SoilReport.UnnamedLaboratory ? null : Institution.FindLaboratory(laboratory);
}
