using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace PlotAgronomy.PlanFiles;

/// <summary>A seeding rate, in bushels too: by the weight that a bushel of the kind has by law or in trade.</summary>
/// <param name="kind">Field with the kind.</param>
/// <param name="example">Example for schema, page and messages.</param>
internal sealed partial class PlanSeedRate(PlanField<CropKind> kind, string example) : PlanValue<ApplicationRate>
{
    private readonly PlanValue<ApplicationRate> weighed = Value.Rate(example, mayBeZero: false);

    internal override string InWords => $"{weighed.InWords}, or bushels, such as `2 bu/ac`";

    internal override void Describe(Utf8JsonWriter schema) => weighed.Describe(schema);

    internal override bool TryRead(PlanNode node, PlanPart at, out ApplicationRate value)
    {
        value = default;
        if (node.Kind != PlanNodeKind.Text || InBushels().Match(node.Text) is not { Success: true } typed)
        {
            return weighed.TryRead(node, at, out value);
        }

        if (at.Find(kind) is not { } grown)
        {
            return false;
        }

        if (grown.BushelWeight is not { } bushel)
        {
            at.Report(node, $"the weight of a bushel of {grown.CommonName} is not known: write the rate in lb/ac");
            return false;
        }

        double low = Math.Round(bushel.Low.PoundsPerCubicFoot * ExactUnits.CubicFeetPerBushel, 6, MidpointRounding.AwayFromZero),
            high = Math.Round(bushel.High.PoundsPerCubicFoot * ExactUnits.CubicFeetPerBushel, 6, MidpointRounding.AwayFromZero);
        double bushels = double.Parse(typed.Groups["count"].Value, CultureInfo.InvariantCulture);
        string weight = low < high ? $"{Amounts.Print(low, 1)} to {Amounts.Print(high, 1)} lb" : $"{Amounts.Print(low, 1)} lb";
        if (low < high)
        {
            at.Report(
                node,
                $"a bushel of {grown.CommonName} is printed as {weight}: write the rate in lb/ac, from "
                    + $"{Amounts.Print(bushels * low, 1)} to {Amounts.Print(bushels * high, 1)}"
            );
            return false;
        }

        value = ApplicationRate.FromPoundsPerAcre(bushels * low);
        if (!(bushels > 0) || value.PoundsPerAcre > PlanLimits.All["rate-high"])
        {
            at.Report(node, $"'{node.Text}' cannot be meant: is the figure right?");
            return false;
        }

        at.Tell(
            node,
            $"'{node.Text}' of {grown.CommonName} is {Amounts.Print(value, "lb/ac", 2)}: a bushel weighs {weight} "
                + $"({bushel.Evidence})"
        );
        return true;
    }

    internal override PlanNode? Write(ApplicationRate value, string path, List<PlanProblem> refusals) =>
        weighed.Write(value, path, refusals);

    [GeneratedRegex(
        @"^\s*(?<count>[0-9]{1,6}(?:\.[0-9]+)?)\s*(?:bu|bushels?)\s*(?:/|per|an)\s*(?:ac|acre)\s*$",
        RegexOptions.IgnoreCase
    )]
    private static partial Regex InBushels();
}
