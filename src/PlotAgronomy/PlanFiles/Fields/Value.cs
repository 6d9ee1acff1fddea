using System.Numerics;
using PlotAgronomy.Seeds;
using UnitsNet;

namespace PlotAgronomy.PlanFiles;

/// <summary>Every sort of value that a field of the plan file may hold.</summary>
internal static class Value
{
    internal static PlanValue<DateOnly> Date { get; } = new PlanDate();

    /// <summary>A day, or a month whose first day counts: what lies back counts as long ago as it may be.</summary>
    internal static PlanValue<DateOnly> Since { get; } = new PlanDate(DayOfMonth.First);

    /// <summary>A day, or a month whose last day counts: what is to come may come as late.</summary>
    internal static PlanValue<DateOnly> By { get; } = new PlanDate(DayOfMonth.Last);

    /// <summary>The month of a germination test.</summary>
    internal static PlanValue<TestMonth> Month { get; } = new PlanMonth();

    internal static PlanValue<bool> Flag { get; } = new PlanFlag();

    internal static PlanValue<T> Number<T>(T min, T max)
        where T : struct, INumber<T> => new PlanNumber<T>(min, max);

    /// <summary>A number from zero up to a limit of the table.</summary>
    internal static PlanValue<T> NumberTo<T>(string high)
        where T : struct, INumber<T> => Number(T.Zero, T.CreateChecked(PlanLimits.All[high]));

    /// <summary>A number between two limits of the table, their ids ending in <c>-low</c> and <c>-high</c>.</summary>
    internal static PlanValue<T> NumberWithin<T>(string id)
        where T : struct, INumber<T> =>
        Number(T.CreateChecked(PlanLimits.All[$"{id}-low"]), T.CreateChecked(PlanLimits.All[$"{id}-high"]));

    internal static PlanValue<string> Text(string example = "") => new PlanText<string>(example, AsItIs, t => t);

    internal static PlanValue<T> Text<T>(string example, PlanText<T>.Reader read, Func<T, string?> print) =>
        new PlanText<T>(example, read, print);

    /// <summary>A kind by a name that fits no other; written by its common name, or by its id.</summary>
    internal static PlanValue<CropKind> Kind(string example) =>
        new PlanText<CropKind>(example, KindCatalog.Standard.TryFind, NameOf);

    /// <summary>A weight above zero.</summary>
    internal static PlanValue<Mass> Mass(string example) =>
        new PlanAmount<Mass>(
            example,
            Amounts.TryReadMass,
            new(Amounts.Print, m => m.Pounds, ["lb", "oz", "g", "kg", "ton", "t"], "weight-high")
        );

    /// <summary>A length above zero.</summary>
    internal static PlanValue<Length> Length(string example) =>
        new PlanAmount<Length>(
            example,
            Amounts.TryReadLength,
            new(Amounts.Print, l => l.Feet, ["ft", "in", "yd", "m", "cm", "mm"], "length-high")
        );

    /// <summary>An area above zero.</summary>
    internal static PlanValue<Area> Area(string example) =>
        new PlanAmount<Area>(
            example,
            Amounts.TryReadArea,
            new(Amounts.Print, a => a.Acres, ["ac", "ft2", "yd2", "m2", "ha"], "area-high")
        );

    /// <summary>A volume above zero.</summary>
    internal static PlanValue<Volume> Volume(string example) =>
        new PlanAmount<Volume>(
            example,
            Amounts.TryReadVolume,
            new(Amounts.Print, v => v.CubicFeet, ["ft3", "gal", "qt", "bu", "L", "m3"], "volume-high")
        );

    /// <summary>A weight of a volume, above zero.</summary>
    internal static PlanValue<Density> Density(string example) =>
        new PlanAmount<Density>(
            example,
            Amounts.TryReadDensity,
            new(Amounts.Print, d => d.PoundsPerCubicFoot, ["lb/ft3", "lb/bu", "lb/gal", "kg/m3", "g/cm3"], "density-high")
        );

    /// <summary>A time above zero.</summary>
    internal static PlanValue<TimeSpan> Time(string example) =>
        new PlanAmount<TimeSpan>(
            example,
            Amounts.TryReadDuration,
            new(Amounts.Print, t => t.TotalSeconds, ["s", "min", "h", "d"], "time-high")
        );

    /// <summary>A weight on an area, zero or more.</summary>
    internal static PlanValue<ApplicationRate> Rate(string example, bool mayBeZero = true) =>
        new PlanAmount<ApplicationRate>(
            example,
            Amounts.TryReadRate,
            new(
                Amounts.Print,
                r => r.PoundsPerAcre,
                ["lb/ac", "oz/ac", "ton/ac", "lb/1000 ft2", "oz/1000 ft2", "lb/100 ft2", "kg/ha", "t/ha", "g/m2"],
                "rate-high"
            ),
            mayBeZero
        );

    /// <summary>A part of the whole, zero or more.</summary>
    internal static PlanValue<Fraction> Percent(string example) =>
        new PlanAmount<Fraction>(
            example,
            Amounts.TryReadPercent,
            new((f, _, decimals) => Amounts.Print(f, decimals), f => f.Value, ["%"], Scale: 100),
            mayBeZero: true
        );

    /// <summary>A part of the whole that is held as a number of percent.</summary>
    internal static PlanAmount<double> PercentNumber(string example) =>
        new(example, TryReadPercent, new((p, _, decimals) => $"{Amounts.Print(p, decimals!.Value)} %", p => p, ["%"]), true);

    internal static PlanValue<bool> Choice(string no, string yes) => new PlanChoice<bool>([(no, false), (yes, true)]);

    /// <summary>The words of an enumeration.</summary>
    /// <param name="words">The words.</param>
    /// <param name="never">Values that a plan file never names.</param>
    internal static PlanValue<T> Choice<T>(EnumWords<T> words, params T[] never)
        where T : struct, Enum
    {
        var told = new List<string>(words.Count);
        var values = new T[words.Count];
        for (int i = 0; i < words.Count; i++)
        {
            if (never.Length == 0 || !never.Contains(words.ValueAt(i)))
            {
                values[told.Count] = words.ValueAt(i);
                told.Add(words.WordAt(i));
            }
        }

        return new PlanChoice<T>([.. told], values);
    }

    /// <summary>The words of an enumeration with hyphens in place of spaces.</summary>
    internal static PlanValue<T> Hyphened<T>(EnumWords<T>? words = null)
        where T : struct, Enum
    {
        words ??= EnumWords<T>.FromNames();
        var told = new string[words.Count];
        var values = new T[words.Count];
        for (int i = 0; i < told.Length; i++)
        {
            (told[i], values[i]) = (words.WordAt(i).Replace(' ', '-'), words.ValueAt(i));
        }

        return new PlanChoice<T>(told, values);
    }

    /// <summary>One of the things of a catalog, by its id or name.</summary>
    internal static PlanValue<T> Choice<T>(IEnumerable<T> all, Func<T, string> word)
        where T : notnull => new PlanChoice<T>([.. all.Select(t => (word(t), t))]);

    internal static PlanList<TRead, TWrite> List<TRead, TWrite>(PlanValue<TRead, TWrite> item, int fewest = 0) =>
        new(item, fewest);

    /// <summary>A part of the whole that is left out when it is zero.</summary>
    internal static Fraction? Unless0(Fraction part) => part == Fraction.Zero ? null : part;

    /// <summary>A flag that is left out when it is not set.</summary>
    internal static bool? IfSet(bool flag) => flag ? true : null;

    private static bool AsItIs(string? text, out string? value, out string problem)
    {
        (value, problem) = (text, "");
        return true;
    }

    private static bool TryReadPercent(string? text, out double percent, out string problem)
    {
        bool read = Amounts.TryReadPercent(text, out var fraction, out problem);
        percent = fraction.Percent;
        return read;
    }

    /// <summary>A name by which the catalog finds this very kind; null for a kind of the user's own.</summary>
    private static string? NameOf(CropKind kind) =>
        new[] { kind.CommonName, kind.Id }.FirstOrDefault(name =>
            KindCatalog.Standard.TryFind(name, out var found, out _) && ReferenceEquals(found, kind)
        );
}
