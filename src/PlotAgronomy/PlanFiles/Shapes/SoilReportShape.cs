using PlotAgronomy.Liming;
using PlotAgronomy.Soil;
using static PlotAgronomy.PlanFiles.Value;

namespace PlotAgronomy.PlanFiles;

/// <summary>The soil report, and beside it what the laboratory recommends and what some systems ask beyond it.</summary>
internal sealed class SoilReportShape : PlanShape<SoilReport, PlotPlan>
{
    internal SoilReportShape()
        : base("soilReport", "The laboratory's report as printed.")
    {
        var laboratory = Required("laboratory", Text("state laboratory"), "Laboratory.", p => p.Report.Laboratory);
        var sampled = Required("sampled", Since, "Day of sampling.", p => p.Report.SampledOn);
        var depth = Required("depth", Length("6 in").As(l => SampledLayer.Checked(l), d => d), "Depth of sampling.", p =>
            p.Report.SampledDepth
        );
        var soilClass = Optional("soilClass", Choice(SoilWords.Classes), "Class of soil.", p => p.Report.SoilClass);
        var inWater = NumberTo<double>("ph-high").As(WaterPh.FromValue, p => p.Value);
        var waterPh = Required("waterPh", inWater, "Soil pH in water.", p => p.Report.WaterPh);
        var buffer = Optional("buffer", Buffer(), "Buffer reading.", p => p.Report.BufferPhs.FirstOrDefault());
        var charge = Charge();
        const string OfAcids = "Exchangeable acidity as printed.";
        var acidity = Optional("exchangeableAcidity", charge, OfAcids, p => p.Report.ExchangeableAcidity);
        var cec = Optional("cec", charge, "Cation exchange capacity as printed.", p => p.Report.PrintedExchangeCapacity);
        var organic = Optional("organicMatter", Percent("2.4 %"), "Organic matter.", p => p.Report.OrganicMatter);
        var humic = Optional("humicMatter", Percent("0.6 %"), "Humic matter.", p => p.Report.HumicMatter);
        const string Scooped = "Weight per volume of the scooped soil.";
        var weight = Optional("weightPerVolume", Density("1.12 g/cm3"), Scooped, p => p.Report.WeightPerVolume);
        var readings = Required("readings", List(Reading()), "Printed nutrient values.", p => p.Report.Readings);
        const string Asked = "What some recommendation systems ask beyond the printed values.";
        Facts = Optional("facts", new SoilFactsShape(), Asked, p => p);
        Advice = Optional(
            "recommendation",
            new AdviceShape(laboratory),
            "The laboratory's own recommendation, if it printed one.",
            Printed
        );
        EarlierLime = Optional(
            "earlierLime",
            new EarlierLimeShape(sampled),
            "Lime spread within the year before the sample; leave it out when the printed rate already has it taken off.",
            p => p.EarlierLime is null ? null : p
        );
        Unsaid("the program of a laboratory", p => p.Report.Program is not null);
        Unsaid("a salt pH", p => p.Report.SaltPh is not null);
        Unsaid("more than one buffer reading", p => p.Report.BufferPhs.Length > 1);
        Unsaid("a printed base saturation", p => p.Report.PrintedBaseSaturation is not null);
        Unsaid("a texture on the report", p => p.Report.Texture is not null);
        Unsaid("a buffer pH without the buffer's name", p => p.Report.UnnamedBufferPh is not null);
        Unsaid("a lime buffer capacity", p => p.Report.LimeBufferCapacity is not null);
        Unsaid("potassium of the subsoil", p => p.Report.SubsoilPotassium is not null);

        ReadAs(at => at.Try(readings, () => new SoilReport
                {
                    Laboratory = at.Get(laboratory),
                    SampledOn = at.Maybe(sampled),
                    SampledDepth = at.Maybe(depth),
                    SoilClass = at.Maybe(soilClass),
                    WaterPh = at.Get(waterPh),
                    BufferPhs = at.Find(buffer) is { } read ? [read] : [],
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

    private static PlotPlan? Printed(PlotPlan plan) => plan.Printed is null ? null : plan;

    private static PlanShape<BufferPh> Buffer()
    {
        var shape = new PlanShape<BufferPh>("buffer", "A buffer reading; useless without the buffer's name.");
        var name = shape.Required("name", Choice(SoilWords.Buffers), "Buffer the laboratory used.", b => b.Buffer);
        var ph = shape.Required("ph", NumberTo<double>("ph-high"), "Buffer pH as printed.", b => b.Value);
        shape.ReadAs(at => at.Try(ph, () => BufferPh.FromValue(at.Get(ph), at.Get(name))));
        return shape;
    }

    private static PlanShape<CationCharge> Charge()
    {
        var shape = new PlanShape<CationCharge>("charge", "A charge of the soil, by weight or by volume.");
        var value = shape.Required("value", NumberTo<double>("exchange-high"), "Value as printed.", c => c.Milliequivalents);
        var unit = shape.Required("unit", Choice(SoilWords.ChargeBases), "Unit as printed.", c => c.Basis);
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
        var extractant = shape.Required("extractant", solutions, "Extracting solution.", r => r.Extractant);
        shape.ReadAs(at =>
        {
            var (measured, form) = at.Get(analyte);
            var (number, isUpperLimit) = at.Get(value);
            return at.Try(value, () =>
                SoilReading.FromPrinted(measured, number, at.Get(unit), at.Get(extractant), form) with
                {
                    IsUpperLimit = isUpperLimit,
                }
            );
        });
        return shape;
    }
}
