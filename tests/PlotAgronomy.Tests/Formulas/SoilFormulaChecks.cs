using PlotAgronomy.Soil;

namespace PlotAgronomy.Tests.Formulas;

internal static class SoilFormulaChecks
{
    private static readonly (string Place, double Low, double High) Ppm = ("ppm", 1, 3_000);
    private static readonly (string Place, double Low, double High) Pounds = ("lb/ac", 1, 6_000);
    private static readonly (string Place, double Low, double High) Volume = ("mg/dm3", 1, 3_000);
    private static readonly (string Place, double Low, double High) Depth = ("depth", 1, 24);
    private static readonly (string Place, double Low, double High) Density = ("g/cm3", 0.6, 1.8);
    private static readonly (string Place, double Low, double High) Slice = ("furrow slice", 6, 7);
    private static readonly (string Place, double Low, double High) Million = ("million lb of soil", 0.5, 8);
    private static readonly (string Place, double Low, double High) SliceMillion = ("million lb in the furrow slice", 1.5, 2.5);
    private static readonly (string Place, double Low, double High) Inch = (
        "lb/ac in an inch",
        SoilUnitMath.PoundsPerAcreInch,
        SoilUnitMath.PoundsPerAcreInch
    );
    private static readonly (string Place, double Low, double High) OxidePerElement = ("oxide of an element", 1.1, 2.5);
    private static readonly (string Place, double Low, double High) EquivalentWeight = ("equivalent weight", 10, 45);
    private static readonly (string Place, double Low, double High) Capacity = ("capacity", 2, 40);
    private static readonly (string Place, double Low, double High) Charge = ("charge", 0.05, 2);
    private static readonly (string Place, double Low, double High) Concentration = ("concentration", 1, 3_000);
    private static readonly (string Place, double Low, double High) IndexUnit = ("concentration of an index unit", 0.02, 20);

    internal static FormulaCheck[] Units =>
        [
            new(
                "element-of-oxide",
                d => SoilUnitMath.ElementFromOxide(d["oxide"], d["oxide of an element"]),
                ("oxide", 1, 500),
                OxidePerElement
            ),
            new(
                "oxide-of-element",
                d => SoilUnitMath.OxideFromElement(d["element"], d["oxide of an element"]),
                ("element", 1, 500),
                OxidePerElement
            ),
            new(
                "pounds-of-kilograms",
                d => ApplicationRate.FromKilogramsPerHectare(d["kg/ha"]).PoundsPerAcre,
                ("kg/ha", 1, 3_000),
                Exactly("lb/ac in a kg/ha", ApplicationRate.FromKilogramsPerHectare(1).PoundsPerAcre)
            ),
            new(
                "kilograms-of-pounds",
                d => ApplicationRate.FromPoundsPerAcre(d["lb/ac"]).KilogramsPerHectare,
                Pounds,
                Exactly("kg/ha in a lb/ac", ApplicationRate.FromPoundsPerAcre(1).KilogramsPerHectare)
            ),
            new(
                "concentration-of-charge",
                d => SoilUnitMath.PpmFromMilliequivalents(d["meq"], d["equivalent weight"]),
                ("meq", 0.05, 30),
                EquivalentWeight
            ),
            new(
                "charge-of-concentration",
                d => SoilUnitMath.MilliequivalentsFromPpm(d["concentration"], d["equivalent weight"]),
                Concentration,
                EquivalentWeight
            ),
            new(
                "charge-of-saturation",
                d => SoilUnitMath.ChargeFromSaturation(d["percent"], d["capacity"]),
                ("percent", 0.5, 90),
                Capacity
            ),
            new("saturation-of-charge", d => SoilUnitMath.SaturationFromCharge(d["charge"], d["capacity"]), Charge, Capacity),
            new(
                "concentration-of-index",
                d => SoilUnitMath.ConcentrationFromIndex(d["index"], d["concentration of an index unit"]),
                ("index", 1, 200),
                IndexUnit
            ),
            new(
                "index-of-concentration",
                d => SoilUnitMath.IndexFromConcentration(d["concentration"], d["concentration of an index unit"]),
                Concentration,
                IndexUnit
            ),
            new("pounds-of-volume", d => SoilUnitMath.PoundsPerAcreFromMgPerLiter(d["mg/dm3"], d["depth"]), Volume, Depth, Inch),
            new("volume-of-pounds", d => SoilUnitMath.MgPerLiterFromPoundsPerAcre(d["lb/ac"], d["depth"]), Pounds, Depth, Inch),
            new("ppm-of-volume", d => SoilUnitMath.PpmFromMgPerLiter(d["mg/dm3"], d["g/cm3"]), Volume, Density),
            new("volume-of-ppm", d => SoilUnitMath.MgPerLiterFromPpm(d["ppm"], d["g/cm3"]), Ppm, Density),
            new(
                "other-extractant",
                d => SoilUnitMath.ByOtherExtractant(d["reading"], d["factor"]),
                ("reading", 1, 500),
                ("factor", 0.5, 1.5)
            ),
            new(
                "charge-by-weight",
                d => SoilUnitMath.ChargeByWeight(d["charge by volume"], d["g/cm3"]),
                ("charge by volume", 0.5, 30),
                Density
            ),
        ];

    internal static FormulaCheck[] Layers =>
        [
            new(
                "pounds-in-furrow-slice",
                d => SoilUnitMath.PoundsPerAcreFromPpm(d["ppm"], d["million lb of soil"] * 1e6),
                Ppm,
                Million
            ),
            new(
                "ppm-of-furrow-slice",
                d => SoilUnitMath.PpmFromPoundsPerAcre(d["lb/ac"], d["million lb of soil"] * 1e6),
                Pounds,
                Million
            ),
            new("pounds-in-depth", d => SoilUnitMath.PoundsPerAcreFromPpm(d["ppm"], ByDepth(d)), Ppm, SliceMillion, Depth, Slice),
            new(
                "ppm-of-depth",
                d => SoilUnitMath.PpmFromPoundsPerAcre(d["lb/ac"], ByDepth(d)),
                Pounds,
                SliceMillion,
                Depth,
                Slice
            ),
            new(
                "pounds-in-measured-soil",
                d => SoilUnitMath.PoundsPerAcreFromPpm(d["ppm"], Measured(d)),
                Ppm,
                Density,
                Depth,
                Inch
            ),
            new(
                "ppm-of-measured-soil",
                d => SoilUnitMath.PpmFromPoundsPerAcre(d["lb/ac"], Measured(d)),
                Pounds,
                Density,
                Depth,
                Inch
            ),
        ];

    internal static FormulaCheck[] Exchange =>
        [
            new(
                "cation-charge",
                d => CationMath.Charge(d["concentration"], d["ppm per meq"]),
                Concentration,
                ("ppm per meq", 100, 400)
            ),
            new(
                "acidity-of-buffer",
                d => CationMath.AcidityMilliequivalents(d["buffer pH"], d["start pH"], d["meq per pH"]),
                ("meq per pH", 3, 14),
                ("start pH", 6.5, 8),
                ("buffer pH", 5.5, 8)
            ),
            new("cation-saturation", d => Percent(CationMath.Saturation(d["charge"], d["capacity"])), Charge, Capacity),
            new("exchange-capacity", d => CationMath.Capacity(d["bases"], d["acidity"]), ("bases", 0.5, 30), ("acidity", 0, 12)),
            new(
                "base-saturation",
                d => Percent(CationMath.Saturation(d["bases"], d["capacity"])),
                ("bases", 0.5, 10),
                ("capacity", 10, 40)
            ),
        ];

    private static double ByDepth(Draw d) =>
        SoilUnitMath.SoilPoundsPerAcreByDepth(d["million lb in the furrow slice"] * 1e6, d["depth"], d["furrow slice"]);

    private static double Measured(Draw d) => SoilUnitMath.SoilPoundsPerAcre(d["g/cm3"], d["depth"]);

    private static double Percent(double part) => Fraction.FromValue(part).Percent;

    private static (string Place, double Low, double High) Exactly(string place, double value) => (place, value, value);
}
