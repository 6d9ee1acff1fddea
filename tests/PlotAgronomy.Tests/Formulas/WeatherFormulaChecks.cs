using PlotAgronomy.Weather;

namespace PlotAgronomy.Tests.Formulas;

internal static class WeatherFormulaChecks
{
    private static readonly (string, double, double) SoFar = ("so far", 0, 1);
    private static readonly (string, double, double) Period = ("period", 0, 1);
    private static readonly (string, double, double) Chance = ("chance", 0.05, 1);
    private static readonly (string, double, double) AtLeast = ("at least", 0.1, 60);
    private static readonly (string, double, double) Mean = ("mean if it rains", 0.5, 60);
    private static readonly (string, double, double) Pi = ("pi", Math.PI, Math.PI);
    private static readonly (string, double, double) Extraterrestrial = ("extraterrestrial", 5, 42);
    private static readonly (string, double, double) Temperature = ("temperature", -20, 45);
    private static readonly (string, double, double) High = ("high", 21, 40);
    private static readonly (string, double, double) Low = ("low", -10, 20);
    private static readonly (string, double, double) Base = ("base", -5, 12);
    private static readonly (string, double, double) Rain = ("rain", 0, 40);
    private static readonly (string, double, double) Before = ("depletion before", 0, 29);
    private static readonly (string, double, double) Total = ("total", 20, 29);
    private static readonly (string, double, double) Depletion = ("depletion", 0, 20);
    private static readonly (string, double, double) Exposed = ("exposed", 0.2, 1);
    private static readonly (string, double, double) Basal = ("basal", 0, 0.3);
    private static readonly (string, double, double) Elevation = ("elevation", 0, 3000);

    internal static FormulaCheck[] RainChances =>
        [
            new("weather-chance-strongest", d => RainMath.StrongestPeriod(d["so far"], d["period"]), SoFar, Period),
            new("weather-chance-independent", d => RainMath.IndependentPeriods(d["so far"], d["period"]), SoFar, Period),
            new("weather-chance-sum", d => RainMath.SumOfPeriods(d["so far"], d["period"]), SoFar, Period),
            new("weather-mean-if-it-rains", d => RainMath.MeanIfItRains(d["amount"], d["chance"]), ("amount", 0, 60), Chance),
            new("weather-at-least-patchy", d => RainMath.AtLeastPatchy(d["chance"], d["at least"], d["mean if it rains"]), Chance, AtLeast, Mean),
            new(
                "weather-at-least-general",
                d => RainMath.AtLeastGeneral(d["chance"], d["at least"], d["mean if it rains"], d["shape"]),
                Chance,
                AtLeast,
                Mean,
                ("shape", 3, 3)
            ),
            new(
                "weather-exceeded-with",
                d => RainMath.ExceededWith(d["mean if it rains"], d["chance"], d["wanted chance"]),
                Mean,
                Chance,
                ("wanted chance", 0.05, 0.9)
            ),
            new("weather-rain-rate", d => RainMath.Rate(d["amount"], d["hours"]), ("amount", 0, 60), ("hours", 1, 24)),
        ];

    internal static FormulaCheck[] Sun =>
        [
            new(
                "weather-sun-distance",
                d => SunMath.RelativeDistance(d["swing"], d["cosine of the year's angle"]),
                ("swing", 0.03, 0.04),
                ("cosine of the year's angle", -1, 1)
            ),
            new(
                "weather-declination",
                d => SunMath.Declination(d["tilt"], d["sine of the year's angle"]),
                ("tilt", 0.4, 0.42),
                ("sine of the year's angle", -1, 1)
            ),
            new(
                "weather-extraterrestrial",
                d =>
                    SunMath.Extraterrestrial(
                        d["solar constant"],
                        d["distance"],
                        d["sunset angle"],
                        d["sine product"],
                        d["cosine product"],
                        d["sine of the sunset angle"]
                    ),
                Pi,
                ("solar constant", 0.08, 0.084),
                ("distance", 0.96, 1.04),
                ("sunset angle", 0.5, 2.6),
                ("sine product", -0.3, 0.3),
                ("cosine product", 0.2, 0.95),
                ("sine of the sunset angle", 0.5, 1)
            ),
            new("weather-day-length", d => SunMath.DayLengthHours(d["sunset angle"]), ("sunset angle", 0, 3.14), Pi),
            new(
                "weather-solar-from-sunshine",
                d => SunMath.SolarFromSunshine(d["overcast"], d["clear"], d["sunshine"], d["day length"], d["extraterrestrial"]),
                ("overcast", 0.2, 0.3),
                ("clear", 0.4, 0.6),
                ("sunshine", 0, 8),
                ("day length", 8, 16),
                Extraterrestrial
            ),
            new(
                "weather-solar-from-range",
                d => SunMath.SolarFromRange(d["coefficient"], d["high"], d["low"], d["extraterrestrial"]),
                ("coefficient", 0.16, 0.19),
                High,
                Low,
                Extraterrestrial
            ),
            new(
                "weather-clear-sky",
                d => SunMath.ClearSky(d["at sea"], d["per meter"], d["elevation"], d["extraterrestrial"]),
                ("at sea", 0.7, 0.8),
                ("per meter", 0.00001, 0.00003),
                Elevation,
                Extraterrestrial
            ),
        ];

    internal static FormulaCheck[] Air =>
        [
            new(
                "weather-saturation",
                d => AirMath.SaturationPressure(d["scale"], d["slope"], d["offset"], d["temperature"]),
                ("scale", 0.6, 0.62),
                ("slope", 17, 18),
                Temperature,
                ("offset", 230, 240)
            ),
            new(
                "weather-slope",
                d => AirMath.SlopeOfPressure(d["factor"], d["saturation"], d["temperature"], d["offset"]),
                ("factor", 4098, 4098),
                ("saturation", 0.3, 6),
                Temperature,
                ("offset", 230, 240)
            ),
            new("weather-pressure", d => AirMath.Pressure(d["elevation"]), Elevation),
            new("weather-psychrometric", d => AirMath.PsychrometricConstant(d["factor"], d["pressure"]), ("factor", 0.0006, 0.0007), ("pressure", 60, 105)),
            new(
                "weather-vapour",
                d => AirMath.VapourFromExtremes(d["of the low"], d["of the high"], d["highest humidity"], d["lowest humidity"]),
                ("of the low", 0.3, 3),
                ("highest humidity", 50, 100),
                ("of the high", 1, 6),
                ("lowest humidity", 10, 50)
            ),
            new("weather-net-shortwave", d => AirMath.NetShortwave(d["albedo"], d["solar"]), ("albedo", 0.2, 0.3), ("solar", 2, 32)),
            new(
                "weather-net-longwave",
                d => AirMath.NetLongwave(d["sigma"], d["high"], d["low"], d["vapour"], d["relative solar"]),
                ("sigma", 4.9e-9, 4.91e-9),
                High,
                Low,
                ("vapour", 0.2, 4),
                ("relative solar", 0.3, 1)
            ),
            new(
                "weather-penman-monteith",
                d =>
                    AirMath.PenmanMonteith(
                        d["slope"],
                        d["net radiation"],
                        d["heat into the soil"],
                        d["psychrometric"],
                        d["mean"],
                        d["wind"],
                        d["deficit"]
                    ),
                ("slope", 0.05, 0.4),
                ("net radiation", 1, 20),
                ("heat into the soil", -1, 1),
                ("psychrometric", 0.05, 0.07),
                ("mean", 0, 35),
                ("wind", 0, 8),
                ("deficit", 0, 4)
            ),
            new(
                "weather-hargreaves",
                d => AirMath.Hargreaves(d["factor"], d["mean"], d["shift"], d["high"], d["low"], d["extraterrestrial as water"]),
                ("factor", 0.0023, 0.0023),
                ("mean", 0, 35),
                ("shift", 17.8, 17.8),
                High,
                Low,
                ("extraterrestrial as water", 3, 17)
            ),
        ];

    internal static FormulaCheck[] Seedbed =>
        [
            new(
                "weather-greatest-coefficient",
                d => SeedbedMath.GreatestCoefficient(d["standard"], d["wind"], d["lowest humidity"], d["height"], d["basal"]),
                ("standard", 1.2, 1.2),
                ("wind", 0, 6),
                ("lowest humidity", 15, 80),
                ("height", 0.05, 2),
                Basal
            ),
            new("weather-depletion-after-rain", d => SeedbedMath.StartDepletion(d["depletion before"], d["rain"]), Before, Rain),
            new("weather-percolation", d => SeedbedMath.Percolation(d["rain"], d["depletion before"]), Rain, Before),
            new(
                "weather-wetness-drying",
                d => SeedbedMath.ReductionWhenDrying(d["total"], d["readily"], d["depletion"]),
                Total,
                Depletion,
                ("readily", 2, 12)
            ),
            new(
                "weather-evaporation-coefficient",
                d => SeedbedMath.EvaporationCoefficient(d["wetness"], d["greatest"], d["basal"], d["exposed"]),
                ("wetness", 0, 1),
                ("greatest", 1, 1.3),
                Basal,
                Exposed
            ),
            new(
                "weather-soil-evaporation",
                d => SeedbedMath.Evaporation(d["coefficient"], d["reference"], d["total"], d["depletion"], d["exposed"]),
                ("coefficient", 0, 1.3),
                ("reference", 0, 9),
                Total,
                Depletion,
                Exposed
            ),
            new(
                "weather-depletion-at-night",
                d => SeedbedMath.EndDepletion(d["depletion"], d["evaporation"], d["exposed"]),
                Depletion,
                ("evaporation", 0, 9),
                Exposed
            ),
        ];

    internal static FormulaCheck[] Clocks =>
        [
            new("weather-thermal-rising", d => EmergenceMath.Rising(d["temperature"], d["base"]), Temperature, Base),
            new(
                "weather-thermal-falling",
                d => EmergenceMath.Falling(d["best"], d["base"], d["highest"], d["temperature"]),
                ("best", 20, 28),
                Base,
                ("highest", 34, 38),
                Temperature
            ),
            new(
                "weather-days-needed",
                d => EmergenceMath.DaysNeeded(d["thermal time"], d["temperature"], d["base"]),
                ("thermal time", 10, 220),
                ("temperature", 13, 30),
                Base
            ),
            new(
                "weather-thermal-time-at-depth",
                d => EmergenceMath.ThermalTimeAtDepth(d["at the surface"], d["per mm"], d["depth"]),
                ("at the surface", 10, 220),
                ("per mm", 0, 5),
                ("depth", 0, 80)
            ),
            new("weather-degree-days-simple", d => DegreeDayMath.Simple(d["high"], d["low"], d["base"]), High, Low, Base),
            new(
                "weather-degree-days-clipped",
                d => DegreeDayMath.Clipped(d["high"], d["low"], d["base"], d["upper"]),
                High,
                Low,
                Base,
                ("upper", 20, 35)
            ),
            new(
                "weather-degree-days-sine",
                d => DegreeDayMath.SineAbove(d["mean"], d["base"], d["half pi"], d["angle"], d["swing"], d["cosine of the angle"]),
                ("mean", 0, 30),
                Base,
                ("half pi", Math.PI / 2, Math.PI / 2),
                ("angle", -1.5, 1.5),
                ("swing", 1, 15),
                ("cosine of the angle", 0, 1)
            ),
            new(
                "weather-degree-days-cut",
                d => DegreeDayMath.Cut(d["above the base"], d["above the limit"]),
                ("above the base", 0, 30),
                ("above the limit", 0, 10)
            ),
        ];

    internal static FormulaCheck[] Frost =>
        [
            new(
                "weather-frost-date",
                d => FrostMath.DateWith(d["mean"], d["deviations"], d["spread"]),
                ("mean", 250, 350),
                ("deviations", -3, 3),
                ("spread", 1, 20)
            ),
            new(
                "weather-frost-spread",
                d => FrostMath.SpreadFromTails(d["late"], d["early"], d["deviations between"]),
                ("late", 290, 340),
                ("early", 250, 290),
                ("deviations between", 2.5, 2.6)
            ),
            new("weather-sow-by", d => FrostMath.SowBy(d["frost"], d["days"], d["buffer"]), ("frost", 250, 350), ("days", 30, 100), ("buffer", 0, 14)),
        ];
}
