#:sdk Microsoft.NET.Sdk.Web
#:project ../../src/PlotAgronomy/PlotAgronomy.csproj
#:package Microsoft.AspNetCore.OpenApi@10.0.15

// Sheets for other programs: a plan file is posted to /sheet, its sheet comes back as text, Markdown, HTML or JSON.
using System.Text;
using Microsoft.AspNetCore.Http.Timeouts;
using PlotAgronomy;

const int LargestPlan = 1_000_000;
(string Type, Func<FieldSheet, string> Write)[] forms =
[
    ("text/plain", sheet => sheet.ToText()),
    ("text/markdown", sheet => sheet.ToMarkdown()),
    ("text/html", sheet => sheet.ToHtml()),
    ("application/json", sheet => sheet.ToJson()),
];

var builder = WebApplication.CreateSlimBuilder(args);
builder.WebHost.ConfigureKestrel(server => server.Limits.MaxRequestBodySize = LargestPlan);
builder.Services.AddOpenApi();
builder.Services.AddProblemDetails();
builder.Services.AddRequestTimeouts(o => o.DefaultPolicy = new RequestTimeoutPolicy { Timeout = TimeSpan.FromSeconds(10) });
var service = builder.Build();
service.UseExceptionHandler();
service.UseStatusCodePages();
service.UseRequestTimeouts();
service.MapOpenApi();
service.MapPost("/sheet", SheetAsync)
    .WithSummary("The sheet of a plan file, in the form that Accept names.")
    .Accepts<object>("application/json")
    .Produces(StatusCodes.Status200OK, contentType: forms[0].Type, additionalContentTypes: [.. forms.Skip(1).Select(f => f.Type)])
    .ProducesProblem(StatusCodes.Status400BadRequest)
    .ProducesProblem(StatusCodes.Status406NotAcceptable)
    .ProducesProblem(StatusCodes.Status413PayloadTooLarge);
await service.RunAsync();

async Task<IResult> SheetAsync(HttpRequest request, CancellationToken stop)
{
    if (Form(request) is not { } form)
    {
        return Results.Problem($"There are {string.Join(", ", forms.Select(f => f.Type))}.", statusCode: StatusCodes.Status406NotAcceptable);
    }

    using var body = new StreamReader(request.Body);
    string json;
    try
    {
        json = await body.ReadToEndAsync(stop);
    }
    catch (BadHttpRequestException tooLarge)
    {
        return Results.Problem($"A plan has at most {LargestPlan} bytes.", statusCode: tooLarge.StatusCode);
    }

    var read = PlanFile.Read(json); // opens no file that the plan names
    return read.Plan is { } plan
        ? Results.Text(form.Write(FieldSheet.Of(plan.Solve())), form.Type, Encoding.UTF8)
        : Results.Problem(
            "The plan holds mistakes; each names its line, column and field.",
            statusCode: StatusCodes.Status400BadRequest,
            title: "No plan",
            extensions: new Dictionary<string, object?>
            {
                ["problems"] = read.Problems.Select(p => new { p.Line, p.Column, Field = p.Path, p.Text }).ToArray(),
            }
        );
}

(string Type, Func<FieldSheet, string> Write)? Form(HttpRequest request) =>
    request.GetTypedHeaders().Accept is not { Count: > 0 } wanted ? forms[0]
    : wanted.OrderByDescending(w => w.Quality ?? 1).SelectMany(w => forms.Where(f => w.MatchesMediaType(f.Type))).Cast<(string, Func<FieldSheet, string>)?>().FirstOrDefault();
