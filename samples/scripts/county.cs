#:project ../../src/PlotAgronomy/PlotAgronomy.csproj
#:package ScottPlot@5.1.59
#:property InvariantGlobalization=true

// 500 soil tests of three districts whose tables look unlike: what does each need? A file that is named is drawn: a.png or a.svg.
using PlotAgronomy;
using PlotAgronomy.Columns;
using PlotAgronomy.Nutrients;
using static PlotAgronomy.Columns.ReportColumn;
using static PlotAgronomy.Soil.CationChargeBasis;

var (random, shares) = (new Random(2026), new List<(string Label, double Percent)>());
var state = LaboratoryProfile.For(Institution.NorthCarolina);
var iowa = LaboratoryProfile.For(Institution.Find("Iowa"), system: RecommendationSystem.Find("IA-2013"));
var plots = state.Ask(targetPh: 6, CropRow.DeerTurkeyPlot);
Tell("Fern Creek", plots, Table(',', "Lab no,pH,Ac,P-I,K-I", tests: 180), Sample("Lab no"), WaterPh("pH"),
    ExchangeableAcidity("Ac", Per100CubicCentimeters), state.Phosphorus("P-I"), state.Potassium("K-I"));
Tell("Mill Hollow", plots, Table(';', "No;pH;Acid;P;K", tests: 170).Replace('.', ','), Sample("No"), WaterPh("pH"),
    ExchangeableAcidity("Acid", Per100CubicCentimeters), state.Phosphorus("P"), state.Potassium("K"));
Tell("Long Ridge", iowa.Ask(targetPh: 6.5, CropRow.Corn), Table('\t', "ID\tpH 1:1\tBuffer\tP lb/ac\tK lb/ac", tests: 150),
    Sample("ID"), WaterPh("pH 1:1"), BufferPh("Buffer", SoilBuffer.Sikora),
    Reading("P lb/ac", SoilAnalyte.Phosphorus, SoilTestUnit.PoundsPerAcre, Extractant.BrayP1),
    Reading("K lb/ac", SoilAnalyte.Potassium, SoilTestUnit.PoundsPerAcre, Extractant.AmmoniumAcetate));
if (args is not [var file]) return;
var chart = new ScottPlot.Plot();
chart.Add.Bars([.. shares.Select(s => s.Percent)]).Horizontal = true;
chart.Axes.Left.SetTicks([.. shares.Select((_, place) => (double)place)], [.. shares.Select(s => s.Label)]);
chart.Axes.SetLimitsX(0, 50);
chart.Layout.Fixed(new ScottPlot.PixelPadding(left: 240, right: 30, bottom: 40, top: 40));
chart.Title("Soil tests well below what the crop needs, % of those rated");
chart.Save(file, width: 860, height: 360);

void Tell(string district, ReportRequest asked, string text, params ReportColumn[] columns)
{
    var table = ReportTable.Read(text, district, columns);
    var answers = ReportAnswers.For(table, asked);
    Console.WriteLine($"{district}: {answers}");
    Console.WriteLine($"  lime: {Amounts.Print(answers.MeanLime()!.Value, decimals: 0)} on average, by {asked.LimeMethod}");
    Rate($"{district}, phosphorus", [.. answers.Rows.Select(r => r.Phosphorus).OfType<RatingStanding>()]);
    Rate($"{district}, potassium", [.. answers.Rows.Select(r => r.Potassium).OfType<RatingStanding>()]);
    var told = answers.Rows.SelectMany(r => r.Findings).Where(f => f.Severity > FindingSeverity.Note).CountBy(f => f.Code);
    Console.WriteLine("  told: " + string.Join(", ", told.OrderByDescending(c => c.Value).Select(c => $"{c.Key} {c.Value}")));
    Console.WriteLine($"  cells not taken: {table.Problems.Length}, such as {table.Problems[0]}");
}

void Rate(string label, RatingStanding[] rated)
{
    int low = rated.Count(standing => standing == RatingStanding.WellBelow);
    Console.WriteLine($"  {label}: {low} of {rated.Length} rated are well below");
    shares.Add(($"{label} ({low} of {rated.Length})", 100.0 * low / Math.Max(1, rated.Length)));
}

string Table(char sign, string header, int tests) => header + string.Concat(Enumerable.Range(1, tests).Select(test =>
{
    double ph = 5 + 1.8 * random.NextDouble(), acid = header.Contains("Buffer") ? 3.1 + 0.6 * ph : 7.7 - 1.1 * ph;
    string[] cells = [$"{ph:0.0}", $"{acid:0.0}", $"{random.Next(3, 90)}", $"{random.Next(20, 260)}"];
    string[] slips = [random.Next(2) == 0 ? "66" : "6.O", "n/a", "<5", ""];
    return $"\n{test}{sign}" + string.Join(sign, cells.Zip(slips, (cell, slip) => random.Next(25) == 0 ? slip : cell));
}));
