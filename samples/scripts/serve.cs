#:sdk Microsoft.NET.Sdk.Web
#:project ../../src/PlotAgronomy/PlotAgronomy.csproj
#:package Microsoft.AspNetCore.OpenApi@10.0.15
#:property PublishAot=false

// Sheets for other programs: a plan file is posted to /sheet, its sheet comes back as text, Markdown, HTML or JSON.
using Microsoft.AspNetCore.Http.Timeouts;
using PlotAgronomy;

const int LargestPlan = 1_000_000;
Form[] forms =
[
    new("text/plain", sheet => sheet.ToText()),
    new("text/markdown", sheet => sheet.ToMarkdown()),
    new("text/html", sheet => sheet.ToHtml()),
    new("application/json", sheet => sheet.ToJson()),
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
    .Produces<string>(StatusCodes.Status200OK, forms[0].Type, [.. forms.Skip(1).Select(f => f.Type)])
    .ProducesProblem(StatusCodes.Status400BadRequest)
    .ProducesProblem(StatusCodes.Status406NotAcceptable)
    .ProducesProblem(StatusCodes.Status413PayloadTooLarge)
    .ProducesProblem(StatusCodes.Status504GatewayTimeout);
await service.RunAsync();

async Task<IResult> SheetAsync(HttpRequest request)
{
    var stop = request.HttpContext.RequestAborted;
    if (Wanted(request) is not { } form)
    {
        return Results.Problem($"There are {string.Join(", ", forms.Select(f => f.Type))}.", statusCode: 406);
    }

    using var body = new StreamReader(request.Body);
    string json;
    try
    {
        json = await body.ReadToEndAsync(stop);
    }
    catch (BadHttpRequestException broken) when (broken.StatusCode == StatusCodes.Status413PayloadTooLarge)
    {
        return Results.Problem($"A plan has at most {LargestPlan} bytes.", statusCode: broken.StatusCode);
    }

    var read = PlanFile.Read(json); // opens no file that the plan names
    if (read.Plan is not { } plan)
    {
        var problems = read.Problems.Select(p => new { p.Line, p.Column, Field = p.Path, p.Text });
        var told = new Dictionary<string, object?> { ["problems"] = problems.ToArray() };
        return Results.Problem("Each mistake names its line and field.", title: "No plan", statusCode: 400, extensions: told);
    }

    string sheet = await Task.Run(() => form.Write(FieldSheet.Of(plan.Solve())), stop).WaitAsync(stop);
    return Results.Text(sheet, form.Type, System.Text.Encoding.UTF8);
}

Form? Wanted(HttpRequest request)
{
    var accepted = request.GetTypedHeaders().Accept.OrderByDescending(a => a.Quality ?? 1).ToList();
    var matching = accepted.SelectMany(a => forms.Where(f => a.MatchesMediaType(f.Type)));
    return accepted.Count == 0 ? forms[0] : matching.FirstOrDefault();
}

internal sealed record Form(string Type, Func<FieldSheet, string> Write);
