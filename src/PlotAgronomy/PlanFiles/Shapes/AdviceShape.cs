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
        var crop = Required("crop", Text("wildlife plot"), "Crop it was printed for.", p => p.Printed!.Crop);
        var lime = Optional("lime", Lime(laboratory), "Lime.", p => p.Printed!.Lime is null ? null : p);
        var nitrogen = Optional("nitrogen", new PlanRateRange("40 lb/ac"), "Nitrogen, N.", p =>
            RateRange.Of(p.Printed!.Nitrogen, p.Printed.NitrogenUpTo)
        );
        var phosphate = Optional("phosphate", new PlanRateRange("60 lb/ac"), "Phosphate, P2O5.", p =>
            RateRange.Of(p.Printed!.Phosphate, p.Printed.PhosphateUpTo)
        );
        var potash = Optional("potash", new PlanRateRange("1.5 lb/1000 ft2"), "Potash, K2O.", p =>
            RateRange.Of(p.Printed!.Potash, p.Printed.PotashUpTo)
        );

        ReadAs(at =>
            new()
            {
                Crop = at.Get(crop),
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
        var rate = shape.Required("rate", Rate("1.5 ton/ac"), "Rate as printed.", p => Of(p).OfBasis);
        var bases = Choice(LimeBasis.Everything, b => b.Id);
        var basis = shape.Required("basis", bases, "Material the rate is written for.", p => Of(p).Basis);
        var targetPh = shape.Required("targetPh", NumberWithin<double>("printed-target-ph"), "pH it aims at.", p =>
            Of(p).TargetPh
        );
        var depth = shape.Required("depth", Length("8 in"), "Depth of soil it treats.", p => Of(p).Depth);
        var institution = shape.Optional(
            "institution",
            Text<Institution>(Institution.NorthCarolina.Name, Institution.TryFind, i => i.IsListed ? i.Name : null),
            "Institution whose table the laboratory went by; without it, the laboratory itself.",
            p => Of(p).Institution == Institution.FindLaboratory(p.Report.Laboratory) ? null : Of(p).Institution
        );
        shape.Unsaid("a rate of no institution", p => Of(p).Institution is null);

        shape.ReadAs(at =>
        {
            var laboratory = at.Around.Around.Find(ofReport);
            var whose = at.Find(institution) ?? (laboratory is null ? null : Institution.FindLaboratory(laboratory));
            return at.Try(rate, () =>
                PrintedLimeRate.Read(at.Get(rate), at.Maybe(targetPh), at.Maybe(depth), at.Get(basis), whose)
            );
        });
        return shape;
    }
}
