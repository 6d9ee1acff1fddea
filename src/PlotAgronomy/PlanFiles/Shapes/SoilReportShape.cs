using PlotAgronomy.Liming;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Soil;
using static PlotAgronomy.PlanFiles.Value;

namespace PlotAgronomy.PlanFiles;

/// <summary>The soil report, and beside it what the laboratory recommends and what some systems ask beyond it.</summary>
internal sealed class SoilReportShape : PlanShape<SoilReport, PlotPlan>
{
    internal SoilReportShape()
        : base("soilReport", "The laboratory's report as printed.")
    {
        var laboratory = Optional(
            "laboratory",
            Text("state laboratory"),
            "Laboratory; chooses the methods where none is named.",
            p => p.ReportOrNone.Laboratory == SoilReport.UnnamedLaboratory ? null : p.ReportOrNone.Laboratory
        ).Answers(NutrientCodes.AskRatings);
        var sampled = Optional("sampled", Since, "Day of sampling.", p => p.ReportOrNone.SampledOn)
            .Answers(SoilCodes.AskSampledDay);
        var depth = Optional("depth", Length("6 in").As(l => SampledLayer.Checked(l), d => d), "Depth of sampling.", p =>
            p.ReportOrNone.SampledDepth
        );
        var soilClass = Optional("soilClass", Choice(SoilWords.Classes), "Class of soil.", p => p.ReportOrNone.SoilClass);
        var inWater = NumberTo<double>("ph-high").As(WaterPh.FromValue, p => p.Value);
        var waterPh = Optional("waterPh", inWater, "Soil pH in water.", p => p.ReportOrNone.WaterPh)
            .Answers(SoilCodes.AskWaterPh);
        var inSalt = NumberTo<double>("ph-high").As(SaltPh.FromValue, p => p.Value);
        const string OfSalt = "Soil pH in a salt solution (pHs), which reads lower than in water (Missouri).";
        var saltPh = Optional("saltPh", inSalt, OfSalt, p => p.ReportOrNone.SaltPh);
        var buffer = Optional("buffer", BufferShape.Shape, "Buffer reading.", p => BufferShape.Of(p.ReportOrNone, 0))
            .Answers(LimingCodes.AskReading, LimingCodes.AskAnyReading);
        var second = Optional("secondBuffer", BufferShape.Shape, "A second buffer reading, where two were run.", p =>
            BufferShape.Of(p.ReportOrNone, 1)
        );
        const string OfGeorgia = "Lime buffer capacity (Georgia).";
        var capacity = Optional("limeBufferCapacity", Capacity(), OfGeorgia, p => p.ReportOrNone.LimeBufferCapacity);
        var charge = Charge();
        const string OfAcids = "Exchangeable acidity as printed.";
        var acidity = Optional("exchangeableAcidity", charge, OfAcids, p => p.ReportOrNone.ExchangeableAcidity)
            .Answers(SoilCodes.AskAcidity);
        var cec = Optional("cec", charge, "Cation exchange capacity as printed.", p => p.ReportOrNone.PrintedExchangeCapacity);
        var organic = Optional("organicMatter", Percent("2.4 %"), "Organic matter.", p => p.ReportOrNone.OrganicMatter);
        var humic = Optional("humicMatter", Percent("0.6 %"), "Humic matter.", p => p.ReportOrNone.HumicMatter);
        const string Scooped = "Weight per volume of the scooped soil.";
        var weight = Optional("weightPerVolume", Density("1.12 g/cm3"), Scooped, p => p.ReportOrNone.WeightPerVolume);
        var readings = Optional("readings", List(Reading()), "Printed nutrient values.", p => p.ReportOrNone.Readings)
            .Answers(NutrientCodes.AskTest, NutrientCodes.AskAnyTest);
        const string Asked = "What some recommendation systems ask beyond the printed values.";
        Facts = Optional("facts", new SoilFactsShape(), Asked, p => p);
        Advice = Optional(
            "recommendation",
            new AdviceShape(laboratory),
            "The laboratory's own recommendation, if it printed one.",
            Printed
        ).Answers(NutrientCodes.AskRange);
        EarlierLime = Optional(
            "earlierLime",
            new EarlierLimeShape(sampled),
            "Lime spread within the year before the sample; leave it out when the printed rate already has it taken off.",
            p => p.EarlierLime is null ? null : p
        );
        LimeSince = Optional(
            "limeSinceSample",
            Rate("1 ton/ac"),
            "Lime spread since this sample was taken, counted in the lime of the rate; it is taken off.",
            p => p.LimeSinceSample
        );
        Unsaid("the program of a laboratory", p => p.ReportOrNone.Program is not null);
        Unsaid("more than two buffer readings", p => BufferShape.Of(p.ReportOrNone, 2) is not null);
        Unsaid("a printed base saturation", p => p.ReportOrNone.PrintedBaseSaturation is not null);
        Unsaid("a texture on the report", p => p.ReportOrNone.Texture is not null);
        Unsaid("potassium of the subsoil", p => p.ReportOrNone.SubsoilPotassium is not null);

        ReadAs(at => at.Try(readings, () => new SoilReport
        {
            Laboratory = at.Find(laboratory) ?? SoilReport.UnnamedLaboratory,
            SampledOn = at.Maybe(sampled),
            SampledDepth = at.Maybe(depth),
            SoilClass = at.Maybe(soilClass),
            WaterPh = at.Find(waterPh),
            SaltPh = at.Find(saltPh),
            BufferPhs = BufferShape.Named(at.Find(buffer), at.Find(second)),
            UnnamedBufferPh = BufferShape.Unnamed(at.Find(buffer), at.Find(second)),
            LimeBufferCapacity = at.Maybe(capacity),
            ExchangeableAcidity = at.Maybe(acidity),
            PrintedExchangeCapacity = at.Maybe(cec),
            OrganicMatter = at.Maybe(organic),
            HumicMatter = at.Maybe(humic),
            WeightPerVolume = at.Maybe(weight),
            Readings = at.All(readings),
        }));
    }

    internal PlanField<Func<PlotPlan, PlotPlan>> Facts { get; }

    internal PlanField<PrintedAdvice> Advice { get; }

    internal PlanField<EarlierLime> EarlierLime { get; }

    internal PlanField<ApplicationRate> LimeSince { get; }

    private static PlotPlan? Printed(PlotPlan plan) => plan.Printed is null ? null : plan;

    private static PlanShape<LimeBufferCapacity> Capacity()
    {
        var shape = new PlanShape<LimeBufferCapacity>("limeBufferCapacity", "Lime buffer capacity, in mg/kg for each pH.");
        var value = shape.Required(
            "value",
            NumberTo<double>("reading-high"),
            "Value as printed, in ppm of lime for each pH.",
            c => c.ThirtyMinutes ?? c.MilligramsPerKilogramPerPh
        );
        var early = shape.Optional("afterThirtyMinutes", Flag, "Whether it was read after 30 minutes, not at equilibrium.", c =>
            IfSet(c.ThirtyMinutes is not null)
        );
        shape.ReadAs(at =>
            at.Try(value, () =>
                at.Find(early)
                    ? PlotAgronomy.Soil.LimeBufferCapacity.FromThirtyMinutes(at.Get(value))
                    : PlotAgronomy.Soil.LimeBufferCapacity.AtEquilibrium(at.Get(value))
            )
        );
        return shape;
    }

    private static PlanShape<CationCharge> Charge()
    {
        var shape = new PlanShape<CationCharge>("charge", "A charge of the soil, by weight or by volume.");
        var value = shape.Required("value", NumberTo<double>("exchange-high"), "Value as printed.", c => c.Milliequivalents);
        var unit = shape.Required(
            "unit",
            Choice(SoilWords.ChargeBases),
            "Unit as printed; a report that prints a bare CEC nearly always means meq/100 g.",
            c => c.Basis
        );
        shape.ReadAs(at => CationCharge.Of(at.Get(value), at.Get(unit)));
        return shape;
    }

    private static PlanShape<SoilReading> Reading()
    {
        var shape = new PlanShape<SoilReading>("reading", "One printed value.");
        var analytes = new PlanChoice<(SoilAnalyte Analyte, PrintedForm Form)>([
            ("P", (SoilAnalyte.Phosphorus, PrintedForm.Element)),
            ("P2O5", (SoilAnalyte.Phosphorus, PrintedForm.Oxide)),
            ("K", (SoilAnalyte.Potassium, PrintedForm.Element)),
            ("K2O", (SoilAnalyte.Potassium, PrintedForm.Oxide)),
            ("Ca", (SoilAnalyte.Calcium, PrintedForm.Element)),
            ("Mg", (SoilAnalyte.Magnesium, PrintedForm.Element)),
            ("Na", (SoilAnalyte.Sodium, PrintedForm.Element)),
            ("S", (SoilAnalyte.Sulfur, PrintedForm.Element)),
            ("B", (SoilAnalyte.Boron, PrintedForm.Element)),
            ("Zn", (SoilAnalyte.Zinc, PrintedForm.Element)),
            ("Mn", (SoilAnalyte.Manganese, PrintedForm.Element)),
            ("Cu", (SoilAnalyte.Copper, PrintedForm.Element)),
            ("Fe", (SoilAnalyte.Iron, PrintedForm.Element)),
            ("Al", (SoilAnalyte.Aluminum, PrintedForm.Element)),
        ]);
        const string AsPrinted = "What was measured, in the form that was printed.";
        var analyte = shape.Required("analyte", analytes, AsPrinted, r => (r.Analyte, r.Form));
        var printed = new PlanMeasured("reading-high");
        var value = shape.Required("value", printed, "Value as printed.", r => (r.PrintedValue, r.IsUpperLimit));
        var units = Choice(SoilWords.Units, never: SoilTestUnit.DecisiemensPerMeter);
        var unit = shape.Required("unit", units, "Unit as printed.", r => r.Unit);
        Extractant[] never = [Extractant.HydrochloricAcid, Extractant.PotassiumChloride, Extractant.SaturatedPaste];
        var solutions = Choice(SoilWords.Extractants, never);
        var extractant = shape.Optional(
            "extractant",
            solutions,
            "Extracting solution, often in the small print; left out where the report does not say.",
            r => r.Extractant
        ).Answers(SoilCodes.AskExtractant);
        shape.ReadAs(at =>
        {
            var (measured, form) = at.Get(analyte);
            var (number, isUpperLimit) = at.Get(value);
            var solution = at.Maybe(extractant) ?? Extractant.NotStated;
            return at.Try(value, () =>
                SoilReading.FromPrinted(measured, number, at.Get(unit), solution, form) with
                {
                    IsUpperLimit = isUpperLimit,
                }
            );
        });
        return shape;
    }
}
