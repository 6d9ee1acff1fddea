using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace PlotAgronomy.Sample.Commands;

/// <summary>The figures of the soil report, typed on one line as they are printed.</summary>
internal static partial class StartFigures
{
    internal const string Waiting = "figures";

    /// <summary>Figures that have a field of their own, with the unit that is meant where none is typed; a pH has none.</summary>
    private static readonly Dictionary<string, (string Name, string Unit)> Alone = new(StringComparer.Ordinal)
    {
        ["ph"] = ("waterPh", ""),
        ["water ph"] = ("waterPh", ""),
        ["ph water"] = ("waterPh", ""),
        ["salt ph"] = ("saltPh", ""),
        ["phs"] = ("saltPh", ""),
        ["om"] = ("organicMatter", "%"),
        ["organic matter"] = ("organicMatter", "%"),
        ["hm"] = ("humicMatter", "%"),
        ["humic matter"] = ("humicMatter", "%"),
        ["w/v"] = ("weightPerVolume", "g/cm3"),
        ["depth"] = ("depth", "in"),
    };

    /// <summary>Charges, with the unit they are usually printed in.</summary>
    private static readonly Dictionary<string, (string Name, string Unit)> Charges = new(StringComparer.Ordinal)
    {
        ["cec"] = ("cec", "meq/100 g"),
        ["ac"] = ("exchangeableAcidity", "meq/100 cm3"),
        ["acidity"] = ("exchangeableAcidity", "meq/100 cm3"),
        ["exchangeable acidity"] = ("exchangeableAcidity", "meq/100 cm3"),
    };

    private static readonly string[] BufferSigns = ["buffer ph", "buffer", "ph buffer", "bph", "buffer index"];

    private static readonly Dictionary<string, string> Signs = new(StringComparer.OrdinalIgnoreCase)
    {
        ["phosphorus"] = "P",
        ["potassium"] = "K",
        ["calcium"] = "Ca",
        ["magnesium"] = "Mg",
        ["sodium"] = "Na",
        ["sulfur"] = "S",
        ["boron"] = "B",
        ["zinc"] = "Zn",
        ["manganese"] = "Mn",
        ["copper"] = "Cu",
        ["iron"] = "Fe",
        ["aluminum"] = "Al",
    };

    /// <summary>Figures with their sign, parted by commas. Nutrients without a unit have the one that is typed behind the next of
    /// them, or the one before; where none is typed they wait for it.</summary>
    internal static void Figures(PlanDraft draft, string answer)
    {
        var waiting = new List<string>();
        string unit = "";
        foreach (string part in StartWords.Parts(answer))
        {
            var read = Figure().Match(part);
            if (!read.Success)
            {
                throw new BadAnswerException($"'{part}' is no figure with its sign, such as P 14 or pH 5.6");
            }

            string sign = read.Groups["sign"].Value.Trim();
            string value = read.Groups["value"].Value.Trim();
            string rest = read.Groups["rest"].Value.Trim();
            if (!IsTakenAlone(draft, sign, value, rest))
            {
                unit = rest.Length == 0 ? unit : rest;
                waiting.Add($"{sign} {value}");
                if (unit.Length > 0)
                {
                    waiting.ForEach(w => Reading(draft, w, unit));
                    waiting.Clear();
                }
            }
        }

        if (waiting.Count > 0)
        {
            Check(draft, waiting);
            draft.Hold(Waiting, string.Join("; ", waiting));
        }
    }

    internal static bool WaitsForUnit(PlanDraft draft) => draft.Held(Waiting) is not null;

    internal static string AskUnit(PlanDraft draft)
    {
        string signs = string.Join(
            ", ",
            draft.Held(Waiting)!.Split("; ").Select(f => Figure().Match(f).Groups["sign"].Value.Trim())
        );
        return $"{signs}: in which unit, and by which test where it says so, such as ppm Mehlich-3?";
    }

    internal static void Unit(PlanDraft draft, string answer)
    {
        string figures = draft.Held(Waiting)!;
        draft.Release(Waiting);
        foreach (string figure in figures.Split("; "))
        {
            Reading(draft, figure, answer);
        }
    }

    internal static string? LeaveUnit(PlanDraft draft)
    {
        draft.Release(Waiting);
        return "left out: without their unit they say nothing";
    }

    /// <summary>Such as <c>pH 5.3, CEC 7.1, P, K</c>.</summary>
    internal static string Understood(PlanDraft draft)
    {
        var report = draft.Plan.Report;
        string[] told =
        [
            .. report?.WaterPh is { } ph ? [$"pH {Amounts.Print(ph.Value, 2)}"] : Array.Empty<string>(),
            .. draft.Has("soilReport.buffer") ? ["a buffer pH"] : Array.Empty<string>(),
            .. draft.Has("soilReport.cec") ? ["exchange capacity"] : Array.Empty<string>(),
            .. draft.Items("soilReport.readings").Select(r => $"{r["analyte"]} {r["value"]} {r["unit"]}"),
            .. WaitsForUnit(draft) ? [draft.Held(Waiting)!.Replace(";", ",", StringComparison.Ordinal)] : Array.Empty<string>(),
        ];
        return told.Length == 0 ? "taken" : string.Join(", ", told);
    }

    private static bool IsTakenAlone(PlanDraft draft, string sign, string value, string rest)
    {
        string said = sign.ToLowerInvariant().Replace("soil ", "", StringComparison.Ordinal);
        if (Alone.TryGetValue(said, out var field))
        {
            string unit = rest.Length == 0 ? field.Unit : rest;
            draft.Put($"soilReport.{field.Name}", unit.Length == 0 ? StartWords.Number(value) : $"{value} {unit}");
            return true;
        }

        if (Charges.TryGetValue(said, out var charge))
        {
            string unit = rest.Length == 0 ? charge.Unit : rest;
            draft.Put($"soilReport.{charge.Name}.value", StartWords.Number(value));
            draft.Put($"soilReport.{charge.Name}.unit", StartWords.Chosen(unit, StartWords.Of("charge", "unit")));
            return true;
        }

        string named = said.Replace(" ph", "", StringComparison.Ordinal);
        string? buffer = StartWords.Of("buffer", "name").FirstOrDefault(b => IsSame(b, named));
        if (buffer is not null || BufferSigns.Contains(said))
        {
            Buffer(draft, value, buffer ?? rest);
            return true;
        }

        return false;
    }

    private static void Buffer(PlanDraft draft, string value, string name)
    {
        draft.Put("soilReport.buffer.ph", StartWords.Number(value));
        if (name.Length > 0)
        {
            draft.Put("soilReport.buffer.name", StartWords.Chosen(name, StartWords.Of("buffer", "name")));
        }
    }

    private static void Reading(PlanDraft draft, string figure, string rest)
    {
        var read = Figure().Match(figure);
        var (sign, value) = (read.Groups["sign"].Value.Trim(), read.Groups["value"].Value.Trim());
        string analyte = Analyte(sign);
        string? unit = StartWords
            .Of("reading", "unit")
            .FirstOrDefault(u => rest.StartsWith(u, StringComparison.OrdinalIgnoreCase));
        if (unit is null)
        {
            throw new BadAnswerException($"which unit is '{rest}'? One of {string.Join(", ", StartWords.Of("reading", "unit"))}");
        }

        string by = rest[unit.Length..].Trim(' ', ',');
        var reading = new JsonObject
        {
            ["analyte"] = analyte,
            ["value"] = value.StartsWith('<') ? value : StartWords.Number(value),
            ["unit"] = unit,
        };
        if (by.Length > 0)
        {
            reading["extractant"] = StartWords.Chosen(by, StartWords.Of("reading", "extractant"));
        }

        draft.Add("soilReport.readings", reading);
    }

    private static string Analyte(string sign)
    {
        string said = Signs.GetValueOrDefault(sign, sign);
        return StartWords.Of("reading", "analyte").FirstOrDefault(a => IsSame(a, said))
            ?? throw new BadAnswerException($"'{sign}' is no figure of a soil report that is counted here");
    }

    private static void Check(PlanDraft draft, IEnumerable<string> figures)
    {
        foreach (string figure in figures)
        {
            var read = Figure().Match(figure);
            Analyte(read.Groups["sign"].Value.Trim());
            if (!read.Groups["value"].Value.StartsWith('<'))
            {
                StartWords.Number(read.Groups["value"].Value);
            }
        }
    }

    private static bool IsSame(string one, string other) => one.Equals(other, StringComparison.OrdinalIgnoreCase);

    [GeneratedRegex(
        @"^(?<sign>[A-Za-z][A-Za-z0-9/ -]*?(?:2O5?)?)\s*[:=]?\s*"
            + @"(?<value><\s*[0-9.,]+|(?<![A-Za-z0-9])[0-9][0-9.,]*)\s*(?<rest>.*)$"
    )]
    private static partial Regex Figure();
}
