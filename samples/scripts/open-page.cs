#:sdk Microsoft.NET.Sdk.Web
#:property PublishAot=false
#:property EnableDefaultRunWorkingDirectory=false

// Opens a folder of plain files, such as the published page, at an address of this machine; nobody else can reach it.
using Microsoft.Extensions.FileProviders;

string folder = Path.GetFullPath(args.FirstOrDefault() ?? "artifacts/page/wwwroot");
string address = args.ElementAtOrDefault(1) ?? "http://127.0.0.1:5070";
if (!File.Exists(Path.Combine(folder, "index.html")))
{
    Console.Error.WriteLine($"There is no page in {folder}.");
    return 1;
}

var builder = WebApplication.CreateSlimBuilder();
builder.WebHost.UseUrls(address);
var server = builder.Build();
server.UseFileServer(new FileServerOptions
{
    FileProvider = new PhysicalFileProvider(folder),
    StaticFileOptions = { ServeUnknownFileTypes = true },
});
await server.RunAsync();
return 0;
