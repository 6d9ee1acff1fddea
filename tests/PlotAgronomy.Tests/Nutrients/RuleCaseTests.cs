using System.Globalization;
using System.Text;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Nutrients;

/// <summary>What every rule of nitrogen and of a secondary nutrient says in every case that it tells apart: at each limit it prints and a
/// little to both sides, without what it asks, and where its condition does not hold. The words stand in <c>rule-cases.approved.txt</c>,
/// read by a person against the publications; the figures are tested by the worked examples.</summary>
public class RuleCaseTests
{
    private const double BesideALimit = 0.01;

    [Fact]
    public void One_case_a_class()
    {
        var said = new StringBuilder();
        foreach (var rule in NitrogenRule.All.Concat(NitrogenRule.Unchecked).OrderBy(r => r.Id, StringComparer.Ordinal))
        {
            Head(said, rule.Id, rule.Title, rule.Origin);
            foreach (var (name, yield, credit) in Cases(rule))
            {
                Tell(said, name, rule.Answer(yield, credit is { } pounds ? ApplicationRate.FromPoundsPerAcre(pounds) : null), "");
            }
        }

        foreach (var rule in SecondaryRule.Everything.OrderBy(r => r.Id, StringComparer.Ordinal))
        {
            Head(said, rule.Id, rule.Title, rule.Origin);
            foreach (var (name, facts) in Cases(rule))
            {
                var answer = rule.Answer(PlotSoil.For(facts.Report), facts.IsLimeDue, facts.TissueSulfur);
                Tell(said, name, answer, $" {Needed(answer.IsNeeded)}: {answer.Reason}");
            }
        }

        ApprovedText.AssertCurrent(Repository.PathOf("tests/PlotAgronomy.Tests/Nutrients/rule-cases.approved.txt"), said.ToString());
    }

    private static void Head(StringBuilder said, string id, string title, Origin origin) =>
        said.Append(CultureInfo.InvariantCulture, $"{id}: {title} ({origin.Status}) [{string.Join(' ', origin.Sources.Select(s => s.Id))}]\n");

    private static void Tell(StringBuilder said, string name, IWorkedResult answer, string why)
    {
        said.Append(CultureInfo.InvariantCulture, $"  {name}:{why}\n");
        foreach (string line in answer.ShowWork().Select(l => l.ToString()).Concat(answer.Findings.Select(f => $"{f.Code}: {f.Text}")))
        {
            said.Append(CultureInfo.InvariantCulture, $"    {line}\n");
        }
    }

    private static string Needed(bool? isNeeded) => isNeeded switch { true => "needed", false => "not needed", _ => "not known" };

    private static IEnumerable<(string Name, CropYield? Yield, double? Credit)> Cases(NitrogenRule rule)
    {
        yield return (rule.YieldUnit is null ? "as printed" : "without a yield", null, null);
        double[] yields = [.. CsvTable.Embedded("Nutrients/Data/nitrogen-yields.csv").Rows.Where(r => r.Text("rule_id") == rule.Id).Select(r => r.Number("yield"))];
        bool isInPounds = yields.Length > 0 && rule.YieldUnit == YieldUnit.Ton;
        double[] asked = rule.YieldUnit is null ? []
            : yields.Length == 0 ? [rule.YieldUnit == YieldUnit.Bushel ? 60 : 3]
            : [yields[0] - 1, yields[0], (yields[0] + yields[1]) / 2, yields[^1], yields[^1] + 1];
        foreach (double yield in asked)
        {
            yield return ($"at {Amounts.Print(yield, 2)}", Yield(yield), null);
        }

        CropYield? middle = asked.Length > 0 ? Yield(asked[asked.Length / 2]) : null;
        yield return ("with a credit of 10", middle, 10);
        yield return ("with a credit of 500", middle, 500);

        CropYield Yield(double printed) =>
            rule.YieldUnit == YieldUnit.Bushel ? CropYield.FromBushelsPerAcre(printed) : CropYield.FromTonsPerAcre(isInPounds ? printed / 2000 : printed);
    }

    private static IEnumerable<(string Name, Facts Facts)> Cases(SecondaryRule rule)
    {
        yield return ("nothing known", new(SoilReport.None));
        foreach (var row in rule.Rows)
        {
            var holds = Holding(row);
            yield return ("where it holds", holds);
            foreach (double test in Beside(row.TestBelow ?? row.TestAtMost))
            {
                yield return ($"test {Amounts.Print(test, 2)}", holds with { Report = holds.Report with { Readings = [Reading(row, test)] } });
            }

            if (row.Analyte is not null && row.Extractants.IsEmpty)
            {
                yield return ("a test by Mehlich-3", holds with { Report = holds.Report with { Readings = [Reading(row, 1, Extractant.Mehlich3)] } });
            }

            foreach (double ph in Beside(row.PhAbove))
            {
                yield return ($"pH {Amounts.Print(ph, 2)}", holds with { Report = holds.Report with { WaterPh = WaterPh.FromValue(ph) } });
            }

            foreach (double percent in Beside(row.OrganicMatterAtMostPercent))
            {
                yield return ($"organic matter {Amounts.Print(percent, 2)} %", holds with { Report = holds.Report with { OrganicMatter = Fraction.FromPercent(percent) } });
            }

            if (row.SandyOnly)
            {
                yield return ("on clay loam", holds with { Report = holds.Report with { Texture = SoilTexture.ClayLoam } });
            }

            if (row.Condition == SecondaryCondition.NoLimeDue)
            {
                yield return ("lime is due", holds with { IsLimeDue = true });
            }

            if (row.Condition == SecondaryCondition.TissueSulfurLow)
            {
                yield return ("sulfur of the tissue 0.25 %", holds with { TissueSulfur = Fraction.FromPercent(0.25) });
            }
        }
    }

    private static Facts Holding(SecondaryRuleRow row) =>
        new(
            new SoilReport
            {
                Laboratory = "test laboratory",
                WaterPh = WaterPh.FromValue(row.PhAbove is { } above ? above + BesideALimit : 6.2),
                SoilClass = row.SoilClass,
                Texture = row.SandyOnly ? SoilTexture.Sand : null,
                OrganicMatter = row.OrganicMatterAtMostPercent is { } most ? Fraction.FromPercent(most) : null,
                Readings = row.Analyte is null ? [] : [Reading(row, row.TestBelow - BesideALimit ?? row.TestAtMost ?? 5)],
            },
            TissueSulfur: row.Condition == SecondaryCondition.TissueSulfurLow ? Fraction.FromPercent(0.24) : null
        );

    private static double[] Beside(double? limit) => limit is { } at ? [at - BesideALimit, at, at + BesideALimit] : [];

    private static SoilReading Reading(SecondaryRuleRow row, double test, Extractant? extractant = null) =>
        SoilReading.FromPrinted(row.Analyte!.Value, test, row.Unit!.Value, extractant ?? (row.Extractants.IsEmpty ? Extractant.NotStated : row.Extractants[0]));

    private sealed record Facts(SoilReport Report, bool IsLimeDue = false, Fraction? TissueSulfur = null);
}
